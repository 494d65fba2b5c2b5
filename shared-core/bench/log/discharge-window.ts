/** First and last row of a stretch of a log, both included. */
export interface Window {
  readonly rest: number;
  readonly start: number;
  readonly end: number;
  readonly last: number;
}

/** Rest before and after a discharge that is kept with it [s]. */
const restBeforeS = 3600;
const restAfterS = 7200;

/**
 * The largest discharge in a log: from the fullest moment to the emptiest one after it, so that short charges in between
 * (braking, test pulses) stay inside. Rest rows next to it are kept, up to one hour before and two hours after.
 *
 * @returns rows of the rest's begin, the discharge's begin and end, and the rest's end; null when nothing is discharged
 */
export function dischargeWindow(timeS: Float64Array, currentA: Float64Array): Window | null {
  let fullest = 0;
  let fullestRow = 0;
  let charge = 0;
  let best = { drop: 0, start: 0, end: 0 };
  let largestA = 0;
  for (let row = 0; row < timeS.length; row += 1) {
    largestA = Math.max(largestA, Math.abs(currentA[row]!));
    if (row > 0)
      charge -= ((currentA[row]! + currentA[row - 1]!) / 2) * (timeS[row]! - timeS[row - 1]!);
    if (charge >= fullest) {
      fullest = charge;
      fullestRow = row;
    }
    if (fullest - charge > best.drop)
      best = { drop: fullest - charge, start: fullestRow, end: row };
  }
  if (best.drop <= 0) return null;
  const still = largestA * 0.05;
  // A meter that shows a few milliamperes at rest moves the fullest moment about: begin and end are where current flows.
  let { start, end } = best;
  while (start < end && currentA[start]! <= still) start += 1;
  while (end > start && currentA[end]! <= still) end -= 1;
  let rest = start;
  while (
    rest > 0 &&
    Math.abs(currentA[rest - 1]!) <= still &&
    timeS[start]! - timeS[rest - 1]! <= restBeforeS
  )
    rest -= 1;
  let last = end;
  while (
    last < timeS.length - 1 &&
    Math.abs(currentA[last + 1]!) <= still &&
    timeS[last + 1]! - timeS[end]! <= restAfterS
  )
    last += 1;
  return { rest, start, end, last };
}
