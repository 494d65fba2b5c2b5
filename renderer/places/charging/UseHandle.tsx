import { useRef, useState, type KeyboardEvent, type PointerEvent, type RefObject } from 'react';
import type { Weekday } from '#core/plan/schema/week.ts';
import { clockText } from '#core/week/index.ts';
import { edit } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatMinutes } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import { removeUse } from './UsageRows.tsx';
import type { UseBar } from './week-bars.ts';

interface UseHandleProps {
  readonly bar: UseBar;
  readonly day: Weekday;
  readonly name: string;
  /** A lane of the strip, whose width is a day. */
  readonly lane: RefObject<HTMLDivElement | null>;
}

/** Times of the strip are moved by this [min]. */
const stepMin = 15;
const dayMin = 1440;
const share = (minutes: number) => `${(100 * minutes) / dayMin}%`;

/** A time of the strip nearest to `minutes`, inside the day. */
const clamp = (minutes: number) =>
  Math.min(dayMin - stepMin, Math.max(0, Math.round(minutes / stepMin) * stepMin));

/** An outing in the strip: dragged along the day, or moved and stretched by keys. One drag is one step to undo. */
export const UseHandle = ({ bar, day, name, lane }: UseHandleProps) => {
  const text = useText(chargingTexts);
  const language = useSettings((state) => state.language);
  const drag = useRef<{ readonly x: number } | null>(null);
  const [shiftMin, setShiftMin] = useState(0);
  const { use, fromMin, toMin } = bar;
  const lengthMin = toMin - fromMin;
  const move = (startMin: number, key: string | null): void =>
    edit(
      text.week.moved(name),
      (plan) => {
        const found = plan.week?.usage.find(({ id }) => id === use.id);
        if (found !== undefined) found.startMin = clamp(startMin);
      },
      key,
    );
  const stretch = (by: number): void =>
    edit(
      text.week.moved(name),
      (plan) => {
        const found = plan.week?.usage.find(({ id }) => id === use.id);
        if (found !== undefined)
          found.durationMin = Math.min(dayMin - 1, Math.max(stepMin, lengthMin + by));
      },
      `week.length.${use.id}`,
    );
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'ArrowLeft') move(use.startMin - stepMin, `week.start.${use.id}`);
    else if (event.key === 'ArrowRight') move(use.startMin + stepMin, `week.start.${use.id}`);
    else if (event.key === 'ArrowUp') stretch(stepMin);
    else if (event.key === 'ArrowDown') stretch(-stepMin);
    else if (event.key === 'Delete' || event.key === 'Backspace')
      removeUse(use.id, name, text.week);
    else return;
    event.preventDefault();
  };
  const shiftOf = (event: PointerEvent): number => {
    const width = lane.current?.getBoundingClientRect().width ?? 0;
    return drag.current === null || width === 0
      ? 0
      : ((event.clientX - drag.current.x) / width) * dayMin;
  };
  const minutes = formatMinutes(lengthMin, language);
  const shown = clamp(fromMin + shiftMin);
  return (
    <button
      type="button"
      className="strip-bar strip-use"
      data-fails={bar.fails}
      aria-label={`${text.week.aboutUse(name, text.daysLong[day], clockText(fromMin), minutes)}${bar.fails ? `, ${text.week.tooLong}` : ''}`}
      title={`${clockText(shown)} ${name}, ${minutes}`}
      style={{ left: share(shiftMin === 0 ? fromMin : shown), width: share(lengthMin) }}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        drag.current = { x: event.clientX };
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={(event) => {
        if (drag.current !== null) setShiftMin(shiftOf(event));
      }}
      onPointerUp={(event) => {
        const by = shiftOf(event);
        drag.current = null;
        setShiftMin(0);
        if (Math.abs(by) >= stepMin / 2) move(fromMin + by, null);
      }}
      onPointerCancel={() => {
        drag.current = null;
        setShiftMin(0);
      }}
    >
      <span className="strip-use-time">{clockText(shown)}</span>
    </button>
  );
};
