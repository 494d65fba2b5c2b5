import type { ChargeWindow } from '#core/plan/schema/week.ts';
import { IconButton } from '../../controls/Button.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { ToggleField } from '../../controls/Toggle.tsx';
import { edit, undo } from '../../state/plan-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { useText } from '../../text/use-text.ts';
import { DayToggles } from './DayToggles.tsx';
import { TimeField } from './TimeField.tsx';

/** The times in which the charger can be plugged in, one a row. */
export const WindowRows = ({ windows }: { readonly windows: readonly ChargeWindow[] }) => {
  const text = useText(chargingTexts).week;
  const named = useFieldWords('week.windows.0.name');
  const attended = useFieldWords('week.windows.0.attended');
  const remove = ({ id, name }: ChargeWindow): void => {
    edit(text.removed(name), (plan) => {
      if (plan.week !== null)
        plan.week.windows = plan.week.windows.filter((window) => window.id !== id);
    });
    showToast(text.removed(name), { label: text.bringBack, run: undo });
  };
  return (
    <div className="charging-rows" role="list">
      <div className="charging-row window-row row-heads" aria-hidden="true">
        <span>{named.title}</span>
        <span>{text.onDays}</span>
        <span>{text.from}</span>
        <span>{text.until}</span>
        <span>{attended.title}</span>
        <span />
      </div>
      {windows.map((window, index) => {
        const path = `week.windows.${index}`;
        return (
          <div key={window.id} className="charging-row window-row" role="listitem">
            <TextField path={`${path}.name`} label={`${named.title} ${index + 1}`} hideLabel />
            <DayToggles
              path={`${path}.days`}
              label={`${text.onDays}, ${window.name}`}
              days={window.days}
            />
            <TimeField path={`${path}.fromMin`} label={`${text.from}, ${window.name}`} />
            <TimeField path={`${path}.toMin`} label={`${text.until}, ${window.name}`} />
            <ToggleField
              path={`${path}.attended`}
              label={`${attended.title}, ${window.name}`}
              hideLabel
            />
            <IconButton
              icon="trash"
              label={text.remove(window.name)}
              onPress={() => remove(window)}
            />
          </div>
        );
      })}
    </div>
  );
};
