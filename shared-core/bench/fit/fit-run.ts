import { fitLine } from '../../numerics/index.ts';
import { dischargeWindow, type Window } from '../log/discharge-window.ts';
import type { LoggedRun } from '../log/logged-run.ts';

/** What a unit of the log is: how many cell groups lie between its terminals, and how many units share the current path. */
export interface UnitLayout {
  readonly kind: 'pack' | 'block' | 'group';
  readonly count: number;
  /** Cell groups in series in one unit. */
  readonly cells: number;
  /** Strings in parallel: the logged current divides by it. */
  readonly strings: number;
  /** Resistance of links and leads of one string inside a logged pack voltage [Ω]; 0 where units were logged. */
  readonly linkOhm: number;
}

/** One discharge made ready for fitting: few rows, charge kept exactly, per string. */
export interface FitRun {
  readonly name: string;
  readonly timeS: Float64Array;
  /** Current of one string at each row [A]. */
  readonly currentA: Float64Array;
  /** Mean current between this row and the one before [A]; 0 for the first. */
  readonly meanA: Float64Array;
  readonly temperatureC: Float64Array | null;
  /** Volts of each unit, per cell group [V]. */
  readonly cellV: readonly Float64Array[];
  /** How fast the volts of each unit fall with the charge taken out [V per whole discharge]; 0 at rest. */
  readonly fallV: readonly Float64Array[];
  /** Weight of each row; 0 for rows that tell nothing. The weights of a run sum to about 100. */
  readonly weight: Float64Array;
  /** Rows from here on are rest volts that the model may stay below but not exceed; the number of rows where there are none. */
  readonly ceilingFrom: number;
  /** Row of the first and last current of the discharge. */
  readonly start: number;
  readonly end: number;
  readonly deliveredAh: number;
  /** Share of the full charge that was already out when the log began. */
  readonly spent: number;
  /** Sum of the units' volts over the pack's volts at rest, where both were logged [V]; corrected for in `cellV`. */
  readonly tapGapV: number;
  readonly staleRows: number;
  readonly rowsOfLog: number;
}

const rowsWanted = 1500;

/** Rest after which a lead block's volts bound the charge left in it from above [s]; they rise on for hours. Common practice, no source. */
const settledAfterS = 3600;

/**
 * Cuts the largest discharge out of a logged run and averages its rows into bins that widen with the time since the last
 * change of current, so that transients keep their rows and long steady stretches do not outweigh them.
 *
 * @param leadAcid a lead block's volts at rest shortly after charge hold surface charge and are not used; after the end
 * they rise for hours with acid that no rate accounts for, so they only tell that the block holds no more than they show
 * @returns null when the run holds no discharge
 */
export function fitRun(run: LoggedRun, layout: UnitLayout, leadAcid: boolean): FitRun | null {
  const window = dischargeWindow(run.timeS, run.currentA);
  if (window === null || window.last - window.rest < 4) return null;
  const columns =
    run.unitVoltageV.length > 0 && layout.kind !== 'pack' ? run.unitVoltageV : [run.voltageV!];
  const { bins, stale } = binRows(run, window.rest, window.last, columns);
  const mean = (column: Float64Array) =>
    Float64Array.from(bins, ([from, to]) => average(column, from, to));
  const timeS = mean(run.timeS);
  const charge = mean(cumulativeCharge(run.timeS, run.currentA));
  const perString = 1 / layout.strings;
  const currentA = mean(run.currentA).map((current) => current * perString);
  const meanA = timeS.map((time, row) => {
    const step = row === 0 ? 0 : time - timeS[row - 1]!;
    return step > 0 ? ((charge[row]! - charge[row - 1]!) / step) * perString : 0;
  });
  const start = bins.findIndex(([, to]) => to > window.start);
  const end = bins.findLastIndex(([from]) => from <= window.end);
  const staleBin = Uint8Array.from(bins, ([from, to]) =>
    stale.subarray(from, to).includes(1) ? 1 : 0,
  );
  const taps = tapCorrection(run, window, layout);
  const cellV = columns.map((column) =>
    mean(column).map(
      (voltage, row) =>
        (voltage +
          currentA[row]! * layout.linkOhm +
          taps.offsetV +
          taps.ohm * currentA[row]! * layout.strings) /
        layout.cells,
    ),
  );
  const fallV = cellV.map((volts) => fall(volts, charge, start, end));
  const settled = timeS.findIndex((time) => time - timeS[end]! > settledAfterS);
  const ceilingFrom = leadAcid && settled > 0 ? settled : timeS.length;
  return {
    name: run.name,
    timeS,
    currentA,
    meanA,
    temperatureC: run.temperatureC === null ? null : mean(run.temperatureC),
    cellV,
    fallV,
    weight: weights(timeS, meanA, fallV, staleBin, {
      start,
      end,
      restUsable: !leadAcid || timeS[start]! - timeS[0]! > 43200,
      ceilingFrom: leadAcid ? ceilingFrom : null,
    }),
    ceilingFrom,
    start,
    end,
    deliveredAh: ((charge[end]! - charge[start]!) / 3600) * perString,
    spent: 0,
    tapGapV: -taps.offsetV * columns.length,
    staleRows: staleBin.reduce((sum, flag) => sum + flag, 0),
    rowsOfLog: window.last - window.rest + 1,
  };
}

/**
 * What to add to each unit's volts so that the units together read what the pack's terminals read: a constant (two meters
 * never agree) and a part that goes with the logged current (bars and leads outside the taps). Nothing where only one was
 * logged.
 */
function tapCorrection(
  run: LoggedRun,
  window: Window,
  layout: UnitLayout,
): { offsetV: number; ohm: number } {
  const pack = run.voltageV;
  const none = { offsetV: 0, ohm: 0 };
  if (pack === null || layout.kind === 'pack') return none;
  const rows = Array.from(
    { length: window.end - window.rest + 1 },
    (_, index) => window.rest + index,
  );
  const gap = rows.map(
    (row) =>
      (pack[row]! - run.unitVoltageV.reduce((sum, unit) => sum + unit[row]!, 0)) / layout.count,
  );
  const line = fitLine(
    rows.map((row) => run.currentA[row]!),
    gap,
  );
  if (line === null)
    return { offsetV: gap.reduce((sum, value) => sum + value, 0) / gap.length, ohm: 0 };
  return { offsetV: line.intercept, ohm: line.slope };
}

/** Bins as half-open row ranges; a change of current or time since it closes a bin. */
function binRows(run: LoggedRun, from: number, last: number, columns: readonly Float64Array[]) {
  const { timeS, currentA } = run;
  let largestA = 0;
  for (let row = from; row <= last; row += 1)
    largestA = Math.max(largestA, Math.abs(currentA[row]!));
  const stale = new Uint8Array(timeS.length);
  for (let row = from + 1; row <= last; row += 1) {
    // Volts that do not move while the current jumps were read before the jump, or after it: neither row can be trusted.
    const jumps = Math.abs(currentA[row]! - currentA[row - 1]!) > 0.2 * largestA;
    if (jumps && columns.every((column) => column[row] === column[row - 1])) {
      stale[row] = 1;
      stale[row - 1] = 1;
      if (row < last && columns.every((column) => column[row + 1] === column[row]))
        stale[row + 1] = 1;
    }
  }
  for (let coarseness = 1; ; coarseness *= 1.6) {
    const bins: (readonly [number, number])[] = [];
    const usual = ((timeS[last]! - timeS[from]!) / rowsWanted) * 2 * coarseness;
    let open = from;
    let sum = currentA[from]!;
    let step = timeS[from]!;
    for (let row = from + 1; row <= last; row += 1) {
      const changed = Math.abs(currentA[row]! - sum / (row - open)) > 0.03 * coarseness * largestA;
      const allowed = Math.min(
        usual,
        Math.max(0.05 * coarseness, 0.1 * coarseness * (timeS[open]! - step)),
      );
      if (changed || timeS[row]! - timeS[open]! > allowed || stale[row] !== stale[row - 1]) {
        bins.push([open, row]);
        open = row;
        sum = 0;
        if (changed) step = timeS[row]!;
      }
      sum += currentA[row]!;
    }
    bins.push([open, last + 1]);
    if (bins.length <= rowsWanted || coarseness > 1e3) return { bins, stale };
  }
}

/**
 * Weight follows the length of the curve: half of it the charge, so that every stretch counts alike, half the fall of the
 * volts, so that the end counts, on which the run time hangs; a tenth follows the rows, for the transients.
 */
function weights(
  timeS: Float64Array,
  meanA: Float64Array,
  fallV: readonly Float64Array[],
  stale: Uint8Array,
  {
    start,
    end,
    restUsable,
    ceilingFrom,
  }: { start: number; end: number; restUsable: boolean; ceilingFrom: number | null },
): Float64Array {
  const within = (row: number) => row > start && row <= end;
  const through = meanA.map((current, row) =>
    within(row) ? Math.abs(current) * (timeS[row]! - timeS[row - 1]!) : 0,
  );
  const falling = through.map(
    (step, row) => step * fallV.reduce((sum, column) => sum + column[row]!, 0),
  );
  const totalThrough = sumOf(through);
  const totalFalling = Math.max(sumOf(falling), 1e-12);
  return timeS.map((_, row) => {
    if (stale[row] === 1 || (row < start && !restUsable)) return 0;
    if (row < start) return Math.min(1, 3 / start);
    if (row > end && ceilingFrom !== null)
      return row < ceilingFrom ? 0 : 6 / (timeS.length - ceilingFrom);
    if (row > end) return Math.min(0.3, 6 / (timeS.length - 1 - end));
    const half = (steps: Float64Array, total: number) =>
      (steps[row]! + (row < end ? steps[row + 1]! : 0)) / 2 / total;
    return (
      45 * half(through, totalThrough) + 45 * half(falling, totalFalling) + 10 / (end - start + 1)
    );
  });
}

function sumOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** Slope of the volts over the charge by a straight line through each row's neighbourhood of 4 % of the discharge. */
function fall(volts: Float64Array, charge: Float64Array, start: number, end: number): Float64Array {
  const total = charge[end]! - charge[start]!;
  const slope = new Float64Array(volts.length);
  let low = start;
  let high = start;
  for (let row = start; row <= end; row += 1) {
    while (low < row && charge[row]! - charge[low]! > 0.02 * total) low += 1;
    while (high < end && charge[high + 1]! - charge[row]! < 0.02 * total) high += 1;
    let [sumQ, sumV, sumQQ, sumQV] = [0, 0, 0, 0];
    const count = high - low + 1;
    for (let near = low; near <= high; near += 1) {
      const share = (charge[near]! - charge[row]!) / total;
      sumQ += share;
      sumV += volts[near]!;
      sumQQ += share * share;
      sumQV += share * volts[near]!;
    }
    const spread = count * sumQQ - sumQ * sumQ;
    slope[row] = spread > 1e-9 ? Math.abs((count * sumQV - sumQ * sumV) / spread) : 0;
  }
  return slope;
}

function average(column: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let row = from; row < to; row += 1) sum += column[row]!;
  return sum / (to - from);
}

/** Charge out since the first row [A·s], by the trapezoid rule. */
function cumulativeCharge(timeS: Float64Array, currentA: Float64Array): Float64Array {
  const charge = new Float64Array(timeS.length);
  for (let row = 1; row < timeS.length; row += 1) {
    charge[row] =
      charge[row - 1]! +
      ((currentA[row]! + currentA[row - 1]!) / 2) * (timeS[row]! - timeS[row - 1]!);
  }
  return charge;
}
