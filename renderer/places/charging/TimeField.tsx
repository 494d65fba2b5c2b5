import { useState } from 'react';
import { editField, readField } from '../../state/plan-path.ts';
import { usePlan } from '../../state/plan-store.ts';

interface TimeFieldProps {
  /** Path of a field in minutes after midnight. */
  readonly path: string;
  readonly label: string;
}

const two = (value: number) => String(value).padStart(2, '0');
const written = (minutes: number) => `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;

/** A time of the day, typed or spun in the way the system does; kept in the plan as minutes. */
export const TimeField = ({ path, label }: TimeFieldProps) => {
  const value = usePlan((plan) => readField(plan, path));
  const minutes = typeof value === 'number' ? value : 0;
  // What is being typed; null shows the plan's own time.
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <span className="input-box">
      <input
        className="time-input"
        type="time"
        aria-label={label}
        data-field={path}
        value={typed ?? written(minutes)}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => {
          const match = /^(\d{2}):(\d{2})/.exec(typed ?? '');
          setTyped(null);
          if (match === null) return;
          const next = Number(match[1]) * 60 + Number(match[2]);
          if (next !== minutes) editField(label, path, next);
        }}
      />
    </span>
  );
};
