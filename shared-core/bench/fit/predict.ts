import type { FitRun } from './fit-run.ts';
import { replay, type CellValues, type UnitState } from './replay.ts';

/** A run as the fitted model would have it, beside what was logged. */
export interface Prediction {
  readonly run: string;
  /** Time since the load came on [s]; runs on past the log where the model is not yet down. */
  readonly timeS: Float64Array;
  /** Volts of all units together, per string [V]. NaN-free: measured volts stop where the log does. */
  readonly modelV: Float64Array;
  readonly measuredV: Float64Array;
  /** Volts between model and log over the discharge, of all units together, rms [mV]. */
  readonly rmsMv: number;
  /** What ended the logged discharge: the volts of all units, or of the lowest one. */
  readonly end: { readonly unit: number | null; readonly voltageV: number };
  readonly measuredMin: number;
  readonly predictedMin: number;
  /** (predicted - measured)/measured. */
  readonly timePercent: number;
  readonly measuredAh: number;
  readonly predictedAh: number;
}

/** Share by which a run is continued at its last current to find a later end. */
const continuation = 0.6;

/**
 * Replays a run from full and compares it with the log: volts along the way, and the time until the volts at which the
 * logged discharge ended. Where single units were logged, the lowest one is watched; otherwise the whole.
 */
export function predict(
  cell: CellValues,
  units: readonly UnitState[],
  run: FitRun,
  cellsPerUnit: number,
): Prediction {
  const longer = continued(run);
  const total = new Float64Array(longer.timeS.length);
  const volts = run.cellV.map((_, unit) => {
    const into = new Float64Array(longer.timeS.length);
    replay(cell, longer, units[unit] ?? units[0]!, into);
    into.forEach((value, row) => (total[row] = total[row]! + value * cellsPerUnit));
    return into;
  });
  const measured = Float64Array.from({ length: run.end + 1 }, (_, row) =>
    run.cellV.reduce((sum, column) => sum + column[row]! * cellsPerUnit, 0),
  );
  const last = lastTrusted(run);
  const lowest =
    run.cellV.length > 1
      ? run.cellV.reduce(
          (low, column, unit) => (column[last]! < run.cellV[low]![last]! ? unit : low),
          0,
        )
      : null;
  const watched = lowest === null ? total : volts[lowest]!.map((value) => value * cellsPerUnit);
  const loggedEnd = lowest === null ? measured[last]! : run.cellV[lowest]![last]! * cellsPerUnit;
  const begin = run.timeS[run.start]!;
  const predictedS = crossing(longer.timeS, watched, loggedEnd, run.start) - begin;
  const measuredS = run.timeS[last]! - begin;
  let squares = 0;
  let weights = 0;
  for (let row = run.start; row <= last; row += 1) {
    if (run.weight[row] === 0 || row === run.start) continue;
    const duration = run.timeS[row]! - run.timeS[row - 1]!;
    squares += duration * (total[row]! - measured[row]!) ** 2;
    weights += duration;
  }
  const shown =
    longer.timeS.findLastIndex((time) => time <= begin + Math.max(predictedS, measuredS)) + 1;
  return {
    run: run.name,
    timeS: longer.timeS.slice(run.start, shown).map((time) => time - begin),
    modelV: total.slice(run.start, shown),
    measuredV: measured.slice(run.start),
    rmsMv: 1000 * Math.sqrt(squares / Math.max(weights, 1e-12)),
    end: { unit: lowest, voltageV: loggedEnd },
    measuredMin: measuredS / 60,
    predictedMin: predictedS / 60,
    timePercent: 100 * (predictedS / measuredS - 1),
    measuredAh: chargeUntil(longer, run.start, begin + measuredS),
    predictedAh: chargeUntil(longer, run.start, begin + predictedS),
  };
}

/** The last row of the discharge whose volts can be trusted: the very last may already hold the recovery. */
function lastTrusted(run: FitRun): number {
  let row = run.end;
  while (
    row > run.start + 1 &&
    (run.weight[row] === 0 || run.cellV.some((column) => column[row]! > column[row - 1]! + 0.01))
  )
    row -= 1;
  return row;
}

/** The discharge alone, carried on at its last current. */
function continued(run: FitRun): FitRun {
  const rows = run.end + 1;
  const span = run.timeS[run.end]! - run.timeS[run.start]!;
  const extra = 400;
  const step = (span * continuation) / extra;
  const lastA = run.meanA[run.end]!;
  const extend = (column: Float64Array, next: (index: number) => number) =>
    Float64Array.from({ length: rows + extra }, (_, row) =>
      row < rows ? column[row]! : next(row - rows + 1),
    );
  return {
    ...run,
    timeS: extend(run.timeS, (index) => run.timeS[run.end]! + index * step),
    currentA: extend(run.currentA, () => lastA),
    meanA: extend(run.meanA, () => lastA),
    temperatureC:
      run.temperatureC === null
        ? null
        : extend(run.temperatureC, () => run.temperatureC![run.end]!),
  };
}

/** Time at which a falling curve passes a voltage for good, linear between rows; the last time where it never does. */
function crossing(
  timeS: Float64Array,
  volts: Float64Array,
  voltageV: number,
  from: number,
): number {
  let row = volts.length - 1;
  if (volts[row]! > voltageV) return timeS[row]!;
  while (row > from && volts[row]! <= voltageV) row -= 1;
  const share = (volts[row]! - voltageV) / (volts[row]! - volts[row + 1]!);
  return timeS[row]! + share * (timeS[row + 1]! - timeS[row]!);
}

function chargeUntil(run: FitRun, from: number, untilS: number): number {
  let charge = 0;
  for (let row = from + 1; row < run.timeS.length; row += 1) {
    const end = Math.min(run.timeS[row]!, untilS);
    if (end <= run.timeS[row - 1]!) break;
    charge += run.meanA[row]! * (end - run.timeS[row - 1]!);
  }
  return charge / 3600;
}
