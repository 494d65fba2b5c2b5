/** What was asked of a piece of work, and whether it is met on this machine now. */
interface Asked {
  readonly words: string;
  readonly isMet: boolean;
}

/** A line of the bench: what was measured, what came out, what was asked of it. */
export interface BenchRow {
  readonly what: string;
  /** With its unit; where nothing could be measured, the reason stands in `note`. */
  readonly result: string;
  readonly asked?: Asked;
  readonly note?: string;
}

const digits = (value: number): string => value.toFixed(value < 10 ? 2 : value < 100 ? 1 : 0);

/** A time, with the most that is asked of it. */
export function timeRow(what: string, ms: number, mostMs?: number, note?: string): BenchRow {
  const long = ms >= 1000;
  return {
    what,
    result: long ? `${digits(ms / 1000)} s` : `${digits(ms)} ms`,
    ...(mostMs === undefined
      ? {}
      : {
          asked: {
            words: mostMs >= 1000 ? `< ${mostMs / 1000} s` : `< ${mostMs} ms`,
            isMet: ms < mostMs,
          },
        }),
    ...(note === undefined ? {} : { note }),
  };
}

/** How often a piece of work is done in a second, with the least that is asked of it. */
export function rateRow(what: string, ms: number, leastPerS?: number, note?: string): BenchRow {
  const rate = 1000 / ms;
  return {
    what,
    result: `${rate.toFixed(rate < 10 ? 1 : 0)} runs/s`,
    ...(leastPerS === undefined
      ? {}
      : { asked: { words: `>= ${leastPerS} runs/s`, isMet: rate >= leastPerS } }),
    note: [`${digits(ms)} ms each`, ...(note === undefined ? [] : [note])].join('; '),
  };
}

/** Any other figure that should not be above its limit. */
export function limitRow(
  what: string,
  value: number,
  unit: string,
  most?: number,
  note?: string,
): BenchRow {
  return {
    what,
    result: `${digits(value)} ${unit}`.trim(),
    ...(most === undefined
      ? {}
      : { asked: { words: `<= ${most} ${unit}`.trim(), isMet: value <= most } }),
    ...(note === undefined ? {} : { note }),
  };
}

/** Something that could not be measured here, and why. */
export const skippedRow = (what: string, reason: string): BenchRow => ({
  what,
  result: '–',
  note: `skipped: ${reason}`,
});
