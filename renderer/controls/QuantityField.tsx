import { memo } from 'react';
import { readField, setField } from '../state/plan-path.ts';
import { edit, usePlan } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { useFieldWords } from '../text/field-words.ts';
import { shownUnit } from '../text/shown-unit.ts';
import { fieldFacts } from './field-facts.ts';
import { QuantityInput } from './QuantityInput.tsx';

export interface QuantityFieldProps {
  /** Path of a number field of the plan, e.g. `machine.harnessResistanceOhm`. */
  readonly path: string;
  /** In place of the title of the schema. */
  readonly label?: string;
  readonly hideLabel?: boolean;
  readonly assumed?: string | undefined;
  /** How far off the assumed value may be, in words. */
  readonly assumedSpread?: string | null | undefined;
  readonly emptyWords?: string;
  /** In place of the plain edit of the field, where more must change with it. */
  readonly onCommit?: (value: number | null, key: string) => void;
}

const PlanQuantity = (props: QuantityFieldProps) => {
  const { path, onCommit } = props;
  const value = usePlan((plan) => readField(plan, path));
  const units = useSettings((state) => state.units);
  const words = useFieldWords(path);
  const facts = fieldFacts(path);
  // A field that an undo has just taken away is rendered once more before its owner goes.
  if (facts === null || value === undefined) return null;
  const stored = words.unit ?? '';
  const label = props.label ?? words.title;
  const change = (next: number | null, key: string): void => {
    if (onCommit !== undefined) onCommit(next, key);
    else edit(label, (plan) => setField(plan, path, next), key);
  };
  return (
    <QuantityInput
      label={label}
      help={words.help}
      value={typeof value === 'number' ? value : null}
      onCommit={(next) => change(next, path)}
      storedUnit={stored}
      shownUnit={shownUnit(path, words.unit, units)}
      range={facts.range}
      nullable={facts.nullable}
      integer={facts.integer}
      assumed={props.assumed}
      assumedSpread={props.assumedSpread}
      emptyWords={props.emptyWords}
      onTry={change}
      hideLabel={props.hideLabel}
      field={path}
    />
  );
};

/**
 * A number of the plan: title, unit, range and help come from the schema. Kept as it is while its own value is: places
 * hold hundreds of them, and an edit changes one.
 */
export const QuantityField = memo(PlanQuantity);
