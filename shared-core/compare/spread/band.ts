import type { RunResult } from '../../run/result.ts';
import { fullRun } from '../scenario.ts';
import { caseScenario } from './spread-plan.ts';
import type { SampledOption } from './spread-plan.ts';
import { bandQuantities, type BandQuantity } from './band-quantities.ts';

/** Times at which the cases are read: `pointCount` of them, from 0 to `untilMin`. */
export interface BandGrid {
  readonly untilMin: number;
  /** At least 2. */
  readonly pointCount: number;
}

/** Some cases read at the times of the grid; what a worker hands back. */
export interface BandPart {
  readonly from: number;
  readonly to: number;
  /** By option: for each case and quantity a row of the grid; points after the end of the case are 0. */
  readonly values: readonly Float64Array[];
  /** By option and case: points of the grid before the end. */
  readonly lengths: readonly Int32Array[];
}

/** One edge of a band: shorter than the grid where that share of the cases has ended before. */
export interface Band {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

export interface OptionBand {
  readonly id: string;
  readonly timeMin: Float64Array;
  readonly quantities: Readonly<Record<BandQuantity, Band>>;
}

/** Runs the cases `from` to `to` (without `to`) of every option with their series and reads them on the grid. */
export function bandPart(
  sampled: readonly SampledOption[],
  grid: BandGrid,
  from: number,
  to: number,
): BandPart {
  const width = grid.pointCount * bandQuantities.length;
  const values = sampled.map(() => new Float64Array((to - from) * width));
  const lengths = sampled.map(() => new Int32Array(to - from));
  sampled.forEach((option, place) => {
    for (let row = from; row < to; row += 1) {
      const { series } = fullRun(caseScenario(option, row));
      const at = (row - from) * width;
      lengths[place]![row - from] = readOnGrid(series, grid, values[place]!, at);
    }
  });
  return { from, to, values, lengths };
}

/** Reads a run at the times of the grid, straight between its rows; says how many points the run has reached. */
function readOnGrid(
  series: RunResult['series'],
  { untilMin, pointCount }: BandGrid,
  into: Float64Array,
  at: number,
): number {
  const { timeS } = series;
  const columns = [series.busVoltageV, series.packCurrentA, series.chargePercent];
  const stepS = (60 * untilMin) / (pointCount - 1);
  const last = timeS.length - 1;
  let row = 0;
  for (let point = 0; point < pointCount; point += 1) {
    const now = point * stepS;
    if (last < 0 || now > timeS[last]!) return point;
    // A switched load gives two rows at one time; the later one holds from then on.
    while (row < last && timeS[row + 1]! <= now) row += 1;
    const next = Math.min(last, row + 1);
    const span = timeS[next]! - timeS[row]!;
    const share = span > 0 ? (now - timeS[row]!) / span : 0;
    columns.forEach((column, place) => {
      into[at + place * pointCount + point] = column[row]! + share * (column[next]! - column[row]!);
    });
  }
  return pointCount;
}

/**
 * The 10th and 90th percentile at each time of the grid. A case that has ended counts as below all others, so that the
 * low edge ends at the low run time and the high edge at the high one.
 */
export function summariseBand(
  ids: readonly string[],
  grid: BandGrid,
  caseCount: number,
  parts: readonly BandPart[],
): OptionBand[] {
  const { pointCount, untilMin } = grid;
  const timeMin = Float64Array.from(
    { length: pointCount },
    (_, point) => (point * untilMin) / (pointCount - 1),
  );
  const inOrder = parts.toSorted((one, other) => one.from - other.from);
  return ids.map((id, option) => {
    const bandOf = (quantity: BandQuantity): Band => {
      const place = bandQuantities.indexOf(quantity);
      const low: number[] = [];
      const high: number[] = [];
      for (let point = 0; point < pointCount; point += 1) {
        const running = valuesAt(inOrder, option, place, point, pointCount).toSorted();
        const ended = caseCount - running.length;
        pushPercentile(low, running, ended, 0.1);
        pushPercentile(high, running, ended, 0.9);
      }
      return { low: Float64Array.from(low), high: Float64Array.from(high) };
    };
    return {
      id,
      timeMin,
      quantities: { bus: bandOf('bus'), current: bandOf('current'), charge: bandOf('charge') },
    };
  });
}

/** Values of the cases that still run at a point. */
function valuesAt(
  parts: readonly BandPart[],
  option: number,
  quantity: number,
  point: number,
  pointCount: number,
): Float64Array {
  const found: number[] = [];
  for (const part of parts) {
    const lengths = part.lengths[option]!;
    for (let row = 0; row < lengths.length; row += 1) {
      if (lengths[row]! <= point) continue;
      const at = (row * bandQuantities.length + quantity) * pointCount + point;
      found.push(part.values[option]![at]!);
    }
  }
  return Float64Array.from(found);
}

function pushPercentile(edge: number[], running: Float64Array, ended: number, share: number): void {
  const rank = share * (running.length + ended - 1) - ended;
  if (rank < 0 || running.length === 0) return;
  const below = Math.floor(rank);
  const lower = running[below]!;
  const upper = running[Math.min(running.length - 1, below + 1)]!;
  edge.push(lower + (rank - below) * (upper - lower));
}
