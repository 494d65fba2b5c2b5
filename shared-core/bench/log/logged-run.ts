import type { CurrentSense } from './mapping.ts';

/** One run as logged: columns in order of time, discharge positive, in the core's units. */
export interface LoggedRun {
  readonly name: string;
  readonly timeS: Float64Array;
  readonly currentA: Float64Array;
  readonly voltageV: Float64Array | null;
  readonly unitVoltageV: readonly Float64Array[];
  readonly temperatureC: Float64Array | null;
  readonly speedKmh: Float64Array | null;
  /** Rows that stood out of order and were sorted in. */
  readonly sortedRows: number;
  readonly repeatedRows: number;
  /** Pauses of the logger: intervals longer than ten usual ones and a minute. */
  readonly gaps: { readonly count: number; readonly longestS: number };
  /** True when the sign of the current was turned to make discharge positive. */
  readonly turned: boolean;
}

interface RawColumns {
  readonly name: string;
  readonly timeS: Float64Array;
  readonly currentA: Float64Array;
  readonly voltageV: Float64Array | null;
  readonly unitVoltageV: readonly Float64Array[];
  readonly temperatureC: Float64Array | null;
  readonly speedKmh: Float64Array | null;
}

/** Sorts by time, drops exact repetitions, settles the sign of the current and counts what was done. */
export function finishRun(raw: RawColumns, sense: CurrentSense): LoggedRun {
  const { order, moved } = timeOrder(raw.timeS);
  const columns = [
    raw.currentA,
    ...(raw.voltageV === null ? [] : [raw.voltageV]),
    ...raw.unitVoltageV,
  ];
  const place = (index: number) => (order === null ? index : order[index]!);
  const kept = new Uint32Array(raw.timeS.length);
  let count = 0;
  for (let index = 0; index < raw.timeS.length; index += 1) {
    const row = place(index);
    const before = kept[count - 1];
    // Two rows at one time are a switched load; only a row that says the same again is a repetition.
    const repeats =
      before !== undefined &&
      raw.timeS[row] === raw.timeS[before] &&
      columns.every((column) => column[row] === column[before]);
    if (!repeats) {
      kept[count] = row;
      count += 1;
    }
  }
  // A log in order and without repetitions, the usual one, needs no second copy of its columns.
  const isPlain = order === null && count === raw.timeS.length;
  const take = (column: Float64Array) =>
    isPlain ? column : Float64Array.from({ length: count }, (_, index) => column[kept[index]!]!);
  const timeS = take(raw.timeS);
  const currentA = take(raw.currentA);
  const voltageV = raw.voltageV === null ? null : take(raw.voltageV);
  const unitVoltageV = raw.unitVoltageV.map(take);
  const turned =
    sense === 'charge-positive' ||
    (sense === 'auto' && chargesWhenPositive(currentA, voltageV ?? unitVoltageV[0]!));
  return {
    name: raw.name,
    timeS,
    currentA: turned ? currentA.map((current) => -current) : currentA,
    voltageV,
    unitVoltageV,
    temperatureC: raw.temperatureC === null ? null : filled(take(raw.temperatureC)),
    speedKmh: raw.speedKmh === null ? null : filled(take(raw.speedKmh)),
    sortedRows: moved,
    repeatedRows: raw.timeS.length - count,
    gaps: findGaps(timeS),
    turned,
  };
}

/** Rows in order of time; null where they stand in order already. */
function timeOrder(timeS: Float64Array): {
  readonly order: Uint32Array | null;
  readonly moved: number;
} {
  let moved = 0;
  let highest = Number.NEGATIVE_INFINITY;
  for (const time of timeS) {
    if (time < highest) moved += 1;
    else highest = time;
  }
  if (moved === 0) return { order: null, moved };
  // The sort is stable, so rows of one time keep the order of the file.
  const order = Uint32Array.from(timeS, (_, index) => index).toSorted(
    (a, b) => timeS[a]! - timeS[b]!,
  );
  return { order, moved };
}

/**
 * Whether positive current is charge: over the longest stretch of one sign the volts of a discharged pack fall and those
 * of a charged one rise.
 */
function chargesWhenPositive(currentA: Float64Array, voltageV: Float64Array): boolean {
  let largest = 0;
  for (const current of currentA) largest = Math.max(largest, Math.abs(current));
  const byJumps = jumpsOf(currentA, voltageV, largest * 0.05);
  if (Math.abs(byJumps) > leastOhm) return byJumps > 0;
  const threshold = largest * 0.1;
  let best = { rows: 0, sign: 1, rise: -1 };
  let start = 0;
  for (let row = 1; row <= currentA.length; row += 1) {
    const sign = signAbove(currentA[start]!, threshold);
    if (row < currentA.length && signAbove(currentA[row]!, threshold) === sign) continue;
    if (sign !== 0 && row - start > best.rows) {
      best = { rows: row - start, sign, rise: voltageV[row - 1]! - voltageV[start]! };
    }
    start = row;
  }
  return best.rise > 0 === best.sign > 0 && best.rows > 0;
}

/** A pack with its leads has more than this [Ω]. */
const leastOhm = 0.001;

/**
 * Volts over amperes of the jumps of the current, by least squares [Ω]: negative where more current means fewer volts, so
 * that positive is discharge. A log of driving begins under a start, and its volts alone would mislead. 0 without jumps.
 */
function jumpsOf(currentA: Float64Array, voltageV: Float64Array, leastA: number): number {
  let squares = 0;
  let products = 0;
  for (let row = 1; row < currentA.length; row += 1) {
    const jump = currentA[row]! - currentA[row - 1]!;
    const change = voltageV[row]! - voltageV[row - 1]!;
    if (Math.abs(jump) <= leastA || !Number.isFinite(change)) continue;
    squares += jump * jump;
    products += jump * change;
  }
  return squares > 0 ? products / squares : 0;
}

function signAbove(current: number, threshold: number): number {
  return Math.abs(current) <= threshold ? 0 : Math.sign(current);
}

const sampledSteps = 20_000;

function findGaps(timeS: Float64Array): LoggedRun['gaps'] {
  if (timeS.length < 3) return { count: 0, longestS: 0 };
  // The usual interval is the median of a sample spread over the log.
  const apart = Math.max(1, Math.floor((timeS.length - 1) / sampledSteps));
  const steps = Float64Array.from(
    { length: Math.floor((timeS.length - 1) / apart) },
    (_, index) => timeS[index * apart + 1]! - timeS[index * apart]!,
  ).toSorted();
  const usual = steps[Math.floor(steps.length / 2)]!;
  const limit = Math.max(60, usual * 10);
  let count = 0;
  let longestS = 0;
  for (let row = 1; row < timeS.length; row += 1) {
    const step = timeS[row]! - timeS[row - 1]!;
    if (step <= limit) continue;
    count += 1;
    longestS = Math.max(longestS, step);
  }
  return { count, longestS };
}

/** Fills missing values with the last one before them, or the first one there is. */
function filled(values: Float64Array): Float64Array | null {
  let last = values.find((value) => !Number.isNaN(value));
  if (last === undefined) return null;
  return values.map((value) => {
    if (!Number.isNaN(value)) last = value;
    return last!;
  });
}
