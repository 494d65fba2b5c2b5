import { useState } from 'react';
import { Button } from '../../controls/Button.tsx';
import { Choice, type ChoiceEntry } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { Toggle } from '../../controls/Toggle.tsx';
import { edit } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import { trimDifferences } from '#core/plan/trim-differences.ts';
import { chemistrySchema, type Bms, type Chemistry } from '#core/plan/schema/block.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { describeBlock } from '../parts/describe-part.ts';
import { useBlockParts } from '../parts/part-lists.ts';
import { PartPicker } from '../parts/PartPicker.tsx';
import { assumedFor, assumedSpread } from './assumed.ts';
import { MatrixRow, QuantityRow } from './MatrixRow.tsx';
import { RatingMetRow } from './RatingMetRow.tsx';
import { RatingRow } from './RatingRow.tsx';

/** A BMS as lithium packs of that chemistry usually have one. Common practice, no source. */
const usualBms = (chemistry: Chemistry): Bms => ({
  continuousDischargeA: 30,
  peakDischargeA: null,
  peakSeconds: 2,
  continuousChargeA: null,
  groupLowV: chemistry === 'nmc' ? 2.8 : 2.5,
  groupHighV: chemistry === 'nmc' ? 4.25 : 3.75,
  reconnectV: null,
});

interface CellProps {
  readonly option: Option;
  readonly index: number;
}

/** The name of the block, which opens library and own parts. */
export const BlockPick = ({ option, index }: CellProps) => {
  const text = useText(packsTexts);
  const language = useSettings((state) => state.language);
  const parts = useBlockParts();
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <div className="pick">
        <span className="pick-name" title={option.pack.block.name}>
          {option.pack.block.name}
        </span>
        <Button label={`${text.pickBlock}, ${option.name}`} onPress={() => setOpen(true)}>
          {text.change}
        </Button>
      </div>
      {isOpen ? (
        <PartPicker
          title={text.pickBlock}
          parts={parts}
          describe={(block) => describeBlock(block, language)}
          onClose={() => setOpen(false)}
          onPick={(block) =>
            edit(text.pickBlock, (plan) => {
              const target = plan.options[index];
              if (target === undefined) return;
              target.pack.block = block;
              Object.assign(target.pack, trimDifferences(target.pack));
            })
          }
        />
      ) : null}
    </>
  );
};

export const BlockRows = () => {
  const text = useText(packsTexts);
  const chemistry = useFieldWords('options.0.pack.block.chemistry');
  const chemistries: ChoiceEntry[] = chemistrySchema.options.map((value) => ({
    value,
    label: text.chemistries[value],
  }));
  return (
    <>
      <MatrixRow
        label={text.groups.block}
        renderCell={(option, index) => <BlockPick option={option} index={index} />}
      />
      <MatrixRow
        label={chemistry.title}
        renderCell={(option, index) => (
          <Choice
            label={`${chemistry.title}, ${option.name}`}
            hideLabel
            field={`options.${index}.pack.block.chemistry`}
            value={option.pack.block.chemistry}
            entries={chemistries}
            onChoose={(value) =>
              edit(chemistry.title, (plan) => {
                const block = plan.options[index]?.pack.block;
                if (block !== undefined) block.chemistry = value as Chemistry;
              })
            }
          />
        )}
      />
      <QuantityRow path="pack.block.cellGroups" />
      <QuantityRow path="pack.block.capacityAh" />
      <QuantityRow path="pack.block.ratedHours" />
      <RatingRow />
      <ExponentRow />
      <QuantityRow path="pack.block.resistanceOhm" />
      <RatingMetRow />
      <QuantityRow path="pack.block.massKg" />
      <QuantityRow path="pack.block.price" />
    </>
  );
};

/** The exponent, or where the rate behaviour comes from otherwise. */
const ExponentRow = () => {
  const text = useText(packsTexts);
  const language = useSettings((state) => state.language);
  const words = useFieldWords('options.0.pack.block.rating.exponent');
  return (
    <MatrixRow
      label={text.exponent}
      help={words.help}
      renderCell={(option, index) => {
        const { rating } = option.pack.block;
        if (rating.kind !== 'exponent') return <span className="matrix-word faint">–</span>;
        return (
          <QuantityField
            path={`options.${index}.pack.block.rating.exponent`}
            label={`${text.exponent}, ${option.name}`}
            hideLabel
            assumed={assumedFor('exponent', option, language)}
            assumedSpread={assumedSpread('exponent', option, language)}
          />
        );
      }}
    />
  );
};

export const BmsRow = () => {
  const text = useText(packsTexts);
  return (
    <MatrixRow
      label={text.hasBms}
      renderCell={(option, index) => (
        <Toggle
          label={`${text.hasBms}, ${option.name}`}
          hideLabel
          field={`options.${index}.pack.block.bms`}
          isOn={option.pack.block.bms !== null}
          onChange={(isOn) =>
            edit(text.hasBms, (plan) => {
              const block = plan.options[index]?.pack.block;
              if (block !== undefined) block.bms = isOn ? usualBms(block.chemistry) : null;
            })
          }
        />
      )}
    />
  );
};
