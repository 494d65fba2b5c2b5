import { useState } from 'react';
import { Checkbox, CheckboxGroup } from 'react-aria-components';
import { Button } from '../../controls/Button.tsx';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Icon } from '../../controls/icons.tsx';
import { ToggleField } from '../../controls/Toggle.tsx';
import { edit } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useStudy } from '../../state/shown-study.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { packsTexts } from '../../text/packs.ts';
import { stripTexts } from '../../text/strip.ts';
import { useText } from '../../text/use-text.ts';
import { chemistrySchema, type Chemistry } from '#core/plan/schema/block.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { describeCharger } from '../parts/describe-part.ts';
import { useChargerParts } from '../parts/part-lists.ts';
import { PartPicker } from '../parts/PartPicker.tsx';
import { MatrixRow, QuantityRow } from './MatrixRow.tsx';

interface CellProps {
  readonly option: Option;
  readonly index: number;
}

const ChargerPick = ({ option, index }: CellProps) => {
  const text = useText(packsTexts);
  const language = useSettings((state) => state.language);
  const parts = useChargerParts();
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <div className="pick">
        <span className="pick-name" title={option.charger?.name ?? ''}>
          {option.charger?.name ?? text.noCharger}
        </span>
        <Button
          label={`${text.pickCharger}, ${option.name}`}
          onPress={() => setOpen(true)}
          field={`options.${index}.charger`}
        >
          {text.change}
        </Button>
      </div>
      {isOpen ? (
        <PartPicker
          title={text.pickCharger}
          parts={parts}
          describe={(charger) => describeCharger(charger, language)}
          onClose={() => setOpen(false)}
          onPick={(charger) =>
            edit(text.pickCharger, (plan) => {
              const target = plan.options[index];
              if (target !== undefined) target.charger = charger;
            })
          }
        />
      ) : null}
    </>
  );
};

/** The verdict on the charger and what speaks against it. */
const FitCell = ({ option }: { readonly option: Option }) => {
  const strip = useText(stripTexts);
  const { study } = useStudy();
  const match = study?.options.find(({ id }) => id === option.id)?.chargerMatch;
  if (match == null) return <span className="faint">–</span>;
  const against = match.aspects.filter(
    ({ verdict }) => verdict === 'misfits' || verdict === 'limits',
  );
  return (
    <div className="fit">
      <span className={`verdict verdict-${match.verdict}`}>{strip.fits[match.verdict]}</span>
      {against.map(({ aspect, reason }) => (
        <span key={aspect} className="fit-reason">
          {reason}
        </span>
      ))}
    </div>
  );
};

const ChemistryChecks = ({ option, index }: CellProps) => {
  const text = useText(packsTexts);
  if (option.charger === null) return <span className="faint">–</span>;
  return (
    <CheckboxGroup
      className="checks"
      aria-label={`${text.madeFor}, ${option.name}`}
      value={[...option.charger.chemistries]}
      onChange={(values) => {
        // A label names at least one chemistry.
        if (values.length === 0) return;
        edit(text.madeFor, (plan) => {
          const charger = plan.options[index]?.charger;
          if (charger != null) charger.chemistries = values as Chemistry[];
        });
      }}
    >
      {chemistrySchema.options.map((value, at) => (
        <Checkbox
          key={value}
          value={value}
          className="check"
          {...(at === 0 ? { 'data-field': `options.${index}.charger.chemistries` } : {})}
        >
          <span className="check-box" aria-hidden="true">
            <Icon name="check" />
          </span>
          {value.toUpperCase().replace('FLOODED', 'Pb').replace('GEL', 'Gel')}
        </Checkbox>
      ))}
    </CheckboxGroup>
  );
};

export const ChargerRows = () => {
  const text = useText(packsTexts);
  return (
    <>
      <MatrixRow
        label={text.groups.charger}
        renderCell={(option, index) => <ChargerPick option={option} index={index} />}
      />
      <MatrixRow label={text.chargerFit} renderCell={(option) => <FitCell option={option} />} />
      <QuantityRow path="charger.currentA" />
      <QuantityRow path="charger.endVoltageV" />
      <QuantityRow path="charger.cellGroups" />
      <MatrixRow
        label={text.madeFor}
        renderCell={(option, index) => <ChemistryChecks option={option} index={index} />}
      />
    </>
  );
};

export const ChargerMoreRows = () => {
  const text = useText(packsTexts);
  const kind = useFieldWords('options.0.charger.kind');
  const pulses = useFieldWords('options.0.charger.equalises');
  return (
    <>
      <MatrixRow
        label={kind.title}
        help={kind.help}
        renderCell={(option, index) => (
          <ChoiceField
            path={`options.${index}.charger.kind`}
            label={`${kind.title}, ${option.name}`}
            hideLabel
            entries={(['staged', 'constant-voltage', 'wall-supply'] as const).map((value) => ({
              value,
              label: text.chargerKinds[value],
            }))}
          />
        )}
      />
      <QuantityRow path="charger.floatVoltageV" emptyWords={text.noFloat} />
      <QuantityRow path="charger.tailCurrentA" />
      <QuantityRow path="charger.compensationMvPerCellK" />
      <QuantityRow path="portLimitA" />
      <QuantityRow path="charger.maximumHours" />
      <QuantityRow path="charger.efficiencyPercent" />
      <QuantityRow path="charger.price" />
      <MatrixRow
        label={pulses.title}
        renderCell={(option, index) => (
          <ToggleField
            path={`options.${index}.charger.equalises`}
            label={`${pulses.title}, ${option.name}`}
            hideLabel
          />
        )}
      />
      <MatrixRow
        label={text.removeCharger}
        renderCell={(option, index) => (
          <Button
            isDisabled={option.charger === null}
            label={`${text.removeCharger}, ${option.name}`}
            onPress={() =>
              edit(text.removeCharger, (plan) => {
                const target = plan.options[index];
                if (target !== undefined) target.charger = null;
              })
            }
          >
            {text.remove}
          </Button>
        )}
      />
    </>
  );
};
