import type { ChargeWindow, Routine } from '../plan/schema/week.ts';
import { dayOf, stretchesOf, type Stretch } from './clock.ts';

/** A time on the charger, by the routine. */
export interface PlugStretch extends Stretch {
  readonly windowId: string;
  readonly attended: boolean;
}

/** When in the week a routine plugs in, in order of time. Windows that overlap are cut so that none counts twice. */
export function plugStretches(windows: readonly ChargeWindow[], routine: Routine): PlugStretch[] {
  const all = windows
    .flatMap((window) =>
      stretchesOf(window.days, window.fromMin, window.toMin).map((stretch) => ({
        ...stretch,
        windowId: window.id,
        attended: window.attended,
      })),
    )
    .toSorted((a, b) => a.startMin - b.startMin);
  const cut: PlugStretch[] = [];
  let busyUntil = 0;
  for (const stretch of all.filter((entry) => wanted(entry, all, routine))) {
    const startMin = Math.max(stretch.startMin, busyUntil);
    if (stretch.endMin <= startMin) continue;
    cut.push({ ...stretch, startMin });
    busyUntil = stretch.endMin;
  }
  return cut;
}

function wanted(stretch: PlugStretch, all: readonly PlugStretch[], routine: Routine): boolean {
  const day = dayOf(stretch.startMin);
  switch (routine.trigger) {
    case 'after-use':
      return true;
    case 'nightly':
      return !all.some(
        (other) => other.startMin > stretch.startMin && dayOf(other.startMin) === day,
      );
    case 'weekend':
      return day === 'sat' || day === 'sun';
    case 'own':
      return routine.ownDays.includes(day);
  }
}
