import { weekdays, type Usage, type Week, type Weekday } from '#core/plan/schema/week.ts';
import { stretchesOf, type WeekStretch } from '#core/week/index.ts';

/** A bar in a row of the strip; minutes of that day. */
export interface DayBar {
  readonly id: string;
  readonly fromMin: number;
  readonly toMin: number;
}

export interface UseBar extends DayBar {
  readonly use: Usage;
  readonly index: number;
  readonly fails: boolean;
}

export interface DayRow {
  readonly day: Weekday;
  readonly windows: readonly DayBar[];
  readonly charges: readonly DayBar[];
  readonly uses: readonly UseBar[];
}

const dayMin = 1440;

/** Cuts a stretch of the week into the days it touches; what runs past Sunday comes back on Monday. */
function cut(
  id: string,
  startMin: number,
  endMin: number,
): { readonly day: number; readonly bar: DayBar }[] {
  const parts: { day: number; bar: DayBar }[] = [];
  for (let day = Math.floor(startMin / dayMin); day * dayMin < endMin; day += 1) {
    const fromMin = Math.max(0, startMin - day * dayMin);
    const toMin = Math.min(dayMin, endMin - day * dayMin);
    if (toMin > fromMin) parts.push({ day: day % 7, bar: { id: `${id}-${day}`, fromMin, toMin } });
  }
  return parts;
}

/** The strip's seven rows: what can be charged when, what the charger does, and the outings. */
export function dayRows(
  week: Week,
  stretches: readonly WeekStretch[],
  goalMin: (outingId: string) => number,
): DayRow[] {
  const windows = week.windows.flatMap((window) =>
    stretchesOf(window.days, window.fromMin, window.toMin).flatMap(({ startMin, endMin }) =>
      cut(`${window.id}-${startMin}`, startMin, endMin),
    ),
  );
  const charges = stretches
    .filter(({ kind, startMin, endMin }) => kind === 'charge' && endMin - startMin >= 5)
    .flatMap(({ startMin, endMin, pack }) => cut(`charge-${pack}-${startMin}`, startMin, endMin));
  const failing = new Set(
    stretches
      .filter(({ failed }) => failed)
      .map(({ usageId, startMin }) => `${usageId}/${Math.floor(startMin / dayMin)}`),
  );
  return weekdays.map((day, number) => ({
    day,
    windows: windows.filter((part) => part.day === number).map(({ bar }) => bar),
    charges: charges.filter((part) => part.day === number).map(({ bar }) => bar),
    uses: week.usage.flatMap((use, index) =>
      use.days.includes(day)
        ? [
            {
              id: `${use.id}-${day}`,
              use,
              index,
              fromMin: use.startMin,
              toMin: Math.min(dayMin, use.startMin + (use.durationMin ?? goalMin(use.outingId))),
              fails: failing.has(`${use.id}/${number}`),
            },
          ]
        : [],
    ),
  }));
}
