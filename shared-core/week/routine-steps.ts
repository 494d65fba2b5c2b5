import { weekdays, type Weekday } from '../plan/schema/week.ts';
import { dayOf, minutesPerDay } from './clock.ts';
import type { WeekStretch } from './season-result.ts';

/** One instruction of the routine: on these days plug in at this time; it will be done by then. */
export interface RoutineStep {
  readonly days: readonly Weekday[];
  /** Minute of the day to plug in. */
  readonly plugMin: number;
  /** Longest time the charge takes [min]. */
  readonly chargingMin: number;
  /** Lowest charge met at plugging in and charge reached [%]. */
  readonly fromPercent: number;
  readonly toPercent: number;
  readonly pack: number;
}

/** Charges shorter than this are the charger keeping a full pack full; they need no instruction [min]. */
const shortestMin = 10;

/** The charges of a typical week as instructions, equal times of different days joined, in order of the week. */
export function routineSteps(stretches: readonly WeekStretch[]): RoutineStep[] {
  const steps = new Map<string, RoutineStep>();
  for (const stretch of stretches) {
    const minutes = stretch.endMin - stretch.startMin;
    if (stretch.kind !== 'charge' || minutes < shortestMin || stretch.startMin === 0) continue;
    const plugMin = Math.round(stretch.startMin) % minutesPerDay;
    const key = `${stretch.pack}/${plugMin}`;
    const known = steps.get(key);
    const day = dayOf(stretch.startMin);
    steps.set(key, {
      days: known === undefined ? [day] : sorted([...new Set([...known.days, day])]),
      plugMin,
      chargingMin: Math.max(known?.chargingMin ?? 0, minutes),
      fromPercent: Math.min(known?.fromPercent ?? 100, stretch.fromPercent),
      toPercent: Math.max(known?.toPercent ?? 0, stretch.toPercent),
      pack: stretch.pack,
    });
  }
  return [...steps.values()].toSorted(
    (a, b) => weekdays.indexOf(a.days[0]!) - weekdays.indexOf(b.days[0]!) || a.plugMin - b.plugMin,
  );
}

function sorted(days: readonly Weekday[]): Weekday[] {
  return days.toSorted((a, b) => weekdays.indexOf(a) - weekdays.indexOf(b));
}
