import { weekdays, type Weekday } from '../plan/schema/week.ts';

export const minutesPerDay = 1440;
export const minutesPerWeek = 7 * minutesPerDay;

/** A stretch of the week, minutes after Monday 0:00; the end may lie in the next week. */
export interface Stretch {
  readonly startMin: number;
  readonly endMin: number;
}

export function dayIndex(day: Weekday): number {
  return weekdays.indexOf(day);
}

export function dayOf(minute: number): Weekday {
  return weekdays[Math.floor(minute / minutesPerDay) % 7]!;
}

/** Stretches of a daily time on the given days. An end at or before the beginning means the next day. */
export function stretchesOf(days: readonly Weekday[], fromMin: number, toMin: number): Stretch[] {
  const length = toMin > fromMin ? toMin - fromMin : toMin + minutesPerDay - fromMin;
  return days
    .map((day) => dayIndex(day) * minutesPerDay + fromMin)
    .toSorted((a, b) => a - b)
    .map((startMin) => ({ startMin, endMin: startMin + length }));
}

/** Minutes of a stretch that fall into a daily time, for the night tariff. */
export function minutesInside(stretch: Stretch, fromMin: number, toMin: number): number {
  let sum = 0;
  const length = toMin > fromMin ? toMin - fromMin : toMin + minutesPerDay - fromMin;
  const firstDay = Math.floor(stretch.startMin / minutesPerDay) - 1;
  const lastDay = Math.floor(stretch.endMin / minutesPerDay);
  for (let day = firstDay; day <= lastDay; day += 1) {
    const from = day * minutesPerDay + fromMin;
    sum += Math.max(0, Math.min(stretch.endMin, from + length) - Math.max(stretch.startMin, from));
  }
  return sum;
}

/** `7:05` of a minute of the day or of the week. */
export function clockText(minute: number): string {
  const ofDay = Math.round(minute) % minutesPerDay;
  return `${Math.floor(ofDay / 60)}:${String(ofDay % 60).padStart(2, '0')}`;
}
