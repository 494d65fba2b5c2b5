import type { Weekday } from '../plan/schema/week.ts';
import type { FailedOuting } from './season-result.ts';
import type { WantedOuting } from './wanted-outings.ts';

/** Counts of each use and day, by key. */
export type FailureBook = Map<string, FailedOuting>;

/** Books an outing, whether it failed or not. */
export function bookFailure(
  book: FailureBook,
  outing: WantedOuting,
  day: Weekday,
  failed: boolean,
  drivenMin: number,
  temperatureC: number,
): void {
  const key = `${outing.usage.id}/${day}`;
  const known = book.get(key) ?? {
    usageId: outing.usage.id,
    outingId: outing.usage.outingId,
    day,
    startMin: outing.usage.startMin,
    wanted: 0,
    failed: 0,
    wantedMin: outing.wantedMin,
    shortestMin: outing.wantedMin,
    temperatureC,
  };
  const shorter = drivenMin < known.shortestMin;
  book.set(key, {
    ...known,
    wanted: known.wanted + 1,
    failed: known.failed + (failed ? 1 : 0),
    shortestMin: shorter ? drivenMin : known.shortestMin,
    temperatureC: shorter ? temperatureC : known.temperatureC,
  });
}

/** The uses that failed at least once, the worst first. */
export function failuresOf(book: FailureBook): FailedOuting[] {
  return [...book.values()]
    .filter((entry) => entry.failed > 0)
    .toSorted((a, b) => b.failed / b.wanted - a.failed / a.wanted);
}
