import type { FoundWire, WireFunction } from '#core/plan/schema/wire-register.ts';
import { functionWords } from '#core/wiring/index.ts';
import { IconButton } from '../../controls/Button.tsx';
import { Choice } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { Toggle } from '../../controls/Toggle.tsx';
import { editField } from '../../state/plan-path.ts';
import { edit, undo } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

interface WireRowProps {
  readonly wire: FoundWire;
  readonly index: number;
  readonly others: readonly FoundWire[];
  readonly verdict: string;
  readonly isOpen: boolean;
}

const open = 'open';

/** One found wire: what is seen, what the meter says, what follows. */
export const WireRow = ({ wire, index, others, verdict, isOpen }: WireRowProps) => {
  const words = useText(wiringTexts);
  const text = words.register;
  const language = useSettings((state) => state.language);
  const path = `wiring.register.${index}`;
  const remove = (): void => {
    edit(text.removed(wire.label), (plan) => {
      if (plan.wiring === null) return;
      plan.wiring.register = plan.wiring.register.filter(({ id }) => id !== wire.id);
      for (const other of plan.wiring.register)
        other.joinedTo = other.joinedTo.filter((id) => id !== wire.id);
    });
    showToast(text.removed(wire.label), { label: words.branch.bringBack, run: undo });
  };
  const join = (id: string, isOn: boolean): void =>
    editField(
      text.joined,
      `${path}.joinedTo`,
      isOn ? [...wire.joinedTo, id] : wire.joinedTo.filter((entry) => entry !== id),
    );
  return (
    <li className="wire-row">
      <div className="wire-fields">
        <TextField path={`${path}.label`} />
        <TextField path={`${path}.colour`} />
        <TextField path={`${path}.endA`} />
        <TextField path={`${path}.endB`} />
        <QuantityField path={`${path}.toMinusOhm`} />
        <QuantityField path={`${path}.keyOffV`} />
        <QuantityField path={`${path}.keyOnV`} />
        <QuantityField path={`${path}.throttleV`} />
        <Choice
          label={text.known}
          field={`${path}.known`}
          value={wire.known ?? open}
          entries={[
            { value: open, label: text.notKnown },
            ...(Object.keys(functionWords) as WireFunction[]).map((value) => ({
              value,
              label: functionWords[value][language],
            })),
          ]}
          onChoose={(value) =>
            editField(text.known, `${path}.known`, value === open ? null : value)
          }
        />
      </div>
      {others.length === 0 ? null : (
        <div className="wire-joined" role="group" aria-label={`${text.joined}, ${wire.label}`}>
          <span className="soft">{text.joined}</span>
          {others.map((other) => (
            <Toggle
              key={other.id}
              label={other.label}
              isOn={wire.joinedTo.includes(other.id)}
              onChange={(isOn) => join(other.id, isOn)}
            />
          ))}
        </div>
      )}
      <div className="wire-verdict" data-open={isOpen}>
        <span>
          <span className="soft">{`${text.deduced}: `}</span>
          {verdict}
        </span>
        <IconButton icon="trash" label={text.remove(wire.label)} onPress={remove} />
      </div>
    </li>
  );
};
