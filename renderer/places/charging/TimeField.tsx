import { useId, useState, type KeyboardEvent } from 'react';
import { editField, readField } from '../../state/plan-path.ts';
import { usePlan } from '../../state/plan-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useText } from '../../text/use-text.ts';
import { clockOf, readClock } from './read-clock.ts';

interface TimeFieldProps {
  /** Path of a field in minutes after midnight. */
  readonly path: string;
  readonly label: string;
}

/** Arrow keys move a time by this [min]. */
const stepMin = 15;
const dayMin = 1440;

/** A time of the day as text; kept in the plan as minutes. What cannot be read stays, with how to write it. */
export const TimeField = ({ path, label }: TimeFieldProps) => {
  const text = useText(chargingTexts).week;
  const id = useId();
  const value = usePlan((plan) => readField(plan, path));
  const minutes = typeof value === 'number' ? value : 0;
  // What is being typed; null shows the plan's own time.
  const [typed, setTyped] = useState<string | null>(null);
  const [isWrong, setWrong] = useState(false);
  const commit = (): void => {
    if (typed === null) return;
    const next = readClock(typed);
    setWrong(next === null);
    if (next === null) return;
    setTyped(null);
    if (next !== minutes) editField(label, path, next);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const by = { ArrowUp: stepMin, ArrowDown: -stepMin }[event.key];
    if (event.key === 'Enter') commit();
    else if (event.key === 'Escape') {
      setTyped(null);
      setWrong(false);
    } else if (by !== undefined) {
      event.preventDefault();
      setTyped(null);
      editField(label, path, (minutes + by + dayMin) % dayMin);
    }
  };
  return (
    <span className="time-field">
      <span className="input-box" data-invalid={isWrong}>
        <input
          className="time-input"
          inputMode="numeric"
          aria-label={label}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? id : undefined}
          data-field={path}
          value={typed ?? clockOf(minutes)}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={commit}
          onKeyDown={onKeyDown}
        />
      </span>
      {isWrong ? (
        <span className="field-error" id={id} role="alert">
          {text.timeWrong}
        </span>
      ) : null}
    </span>
  );
};
