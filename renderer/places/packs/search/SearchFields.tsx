import { chemistrySchema, type Chemistry } from '#core/plan/schema/block.ts';
import type { ChargerChoice } from '#core/compare/search/usual-wishes.ts';
import { Choice } from '../../../controls/ChoiceField.tsx';
import { QuantityInput } from '../../../controls/QuantityInput.tsx';
import { Toggle } from '../../../controls/Toggle.tsx';
import { usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { packsTexts } from '../../../text/packs.ts';
import { searchTexts } from '../../../text/search.ts';
import { shownUnit } from '../../../text/shown-unit.ts';
import { useText } from '../../../text/use-text.ts';
import type { SearchForm } from './search-form.ts';

interface SearchFieldsProps {
  readonly form: SearchForm;
  readonly onChange: (change: Partial<SearchForm>) => void;
}

interface FieldSpec {
  readonly key: Exclude<keyof SearchForm, 'chemistries' | 'charger'>;
  readonly label: string;
  readonly unit: string;
  readonly most: number;
  readonly least?: number;
  readonly nullable?: boolean;
  readonly integer?: boolean;
}

const choices: readonly ChargerChoice[] = ['any', 'at-hand', 'open'];

/** The wishes of a search. */
export const SearchFields = ({ form, onChange }: SearchFieldsProps) => {
  const text = useText(searchTexts);
  const packs = useText(packsTexts);
  const units = useSettings((state) => state.units);
  const currency = usePlan((plan) => plan.currency);
  const hasCharger = usePlan(
    (plan) =>
      plan.ownParts.chargers.length > 0 || plan.options.some(({ charger }) => charger !== null),
  );
  const fields: readonly FieldSpec[] = [
    { key: 'leastVoltageV', label: text.leastVoltage, unit: 'V', least: 1, most: 200 },
    { key: 'mostVoltageV', label: text.mostVoltage, unit: 'V', least: 1, most: 200 },
    { key: 'goalMin', label: text.goal, unit: 'min', most: 1440 },
    { key: 'massLimitKg', label: text.mass, unit: 'kg', most: 500, nullable: true },
    { key: 'priceLimit', label: text.price, unit: currency, most: 100_000, nullable: true },
    {
      key: 'mostParallel',
      label: text.parallel,
      unit: '',
      least: 1,
      most: 12,
      integer: true,
    },
    { key: 'lengthMm', label: text.length, unit: 'mm', most: 3000, nullable: true },
    { key: 'widthMm', label: text.width, unit: 'mm', most: 3000, nullable: true },
    { key: 'heightMm', label: text.height, unit: 'mm', most: 3000, nullable: true },
  ];
  const choose = (chemistry: Chemistry, isOn: boolean): void =>
    onChange({
      chemistries: chemistrySchema.options.filter((each) =>
        each === chemistry ? isOn : form.chemistries.includes(each),
      ),
    });
  return (
    <>
      <div className="search-fields">
        {fields.map(({ key, label, unit, least = 0, most, nullable = false, integer = false }) => (
          <QuantityInput
            key={key}
            label={label}
            value={form[key]}
            onCommit={(value) => onChange({ [key]: value ?? (nullable ? null : form[key]) })}
            storedUnit={unit}
            shownUnit={unit === currency ? currency : shownUnit(key, unit, units)}
            range={{ min: least, max: most, aboveMin: nullable }}
            nullable={nullable}
            integer={integer}
            emptyWords={nullable ? text.noLimit : undefined}
          />
        ))}
      </div>
      <Choice
        label={text.chargers}
        value={form.charger}
        entries={choices
          .filter((choice) => choice !== 'at-hand' || hasCharger)
          .map((value) => ({ value, label: text.chargerChoice[value] }))}
        onChoose={(value) =>
          onChange({ charger: choices.find((choice) => choice === value) ?? 'any' })
        }
      />
      <fieldset className="search-chemistries">
        <legend>{text.chemistries}</legend>
        {chemistrySchema.options.map((chemistry) => (
          <Toggle
            key={chemistry}
            label={packs.chemistries[chemistry]}
            isOn={form.chemistries.includes(chemistry)}
            onChange={(isOn) => choose(chemistry, isOn)}
          />
        ))}
      </fieldset>
    </>
  );
};
