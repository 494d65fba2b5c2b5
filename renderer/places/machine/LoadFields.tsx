import { Choice } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { editField, readField } from '../../state/plan-path.ts';
import { usePlan } from '../../state/plan-store.ts';
import { machineTexts } from '../../text/machine.ts';
import { useText } from '../../text/use-text.ts';
import { freshLoad, valueFieldOf, type LoadKind } from './load-kinds.ts';

interface LoadFieldsProps {
  readonly path: string;
  /** Of the thing that has the load, for the names of the fields. */
  readonly name: string;
  readonly kinds: readonly LoadKind[];
  /** What another kind does; without it the load becomes a fresh one of that kind. */
  readonly onKind?: (kind: LoadKind) => void;
}

/** How a load is known (watts, amps, ohms, nothing) and its one number. */
export const LoadFields = ({ path, name, kinds, onKind }: LoadFieldsProps) => {
  const text = useText(machineTexts);
  const load = usePlan((plan) => readField(plan, path)) as { kind: LoadKind } | null;
  const kind = load?.kind ?? 'none';
  const field = valueFieldOf(kind);
  const offered = kinds.includes(kind) ? kinds : [...kinds, kind];
  return (
    <div className={field === null ? 'load-fields load-wide' : 'load-fields'}>
      <Choice
        label={`${text.loadKind}, ${name}`}
        hideLabel
        value={kind}
        entries={offered.map((value) => ({ value, label: text.loadKinds[value] }))}
        onChoose={(next) => {
          if (onKind === undefined)
            editField(text.loadKind, path, freshLoad(next as LoadKind, load));
          else onKind(next as LoadKind);
        }}
        field={path}
      />
      {field === null ? null : (
        <QuantityField
          path={`${path}.${field}`}
          label={`${text.loadKinds[kind]}, ${name}`}
          hideLabel
        />
      )}
    </div>
  );
};
