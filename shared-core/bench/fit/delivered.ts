import type { FitRun } from './fit-run.ts';
import { replay, type CellValues } from './replay.ts';

/**
 * Charge a full block delivers at constant current until each cell group stands at `endV` [A·h], by replaying the fitted
 * model; 0 when the current pulls it below at once.
 */
export function deliveredAh(cell: CellValues, currentA: number, endV: number): number {
  const rows = 2000;
  const longestS = (cell.capacityAh * 3600 * 1.2) / currentA;
  const steady = new Float64Array(rows).fill(currentA);
  const run: FitRun = {
    name: '',
    timeS: Float64Array.from({ length: rows }, (_, row) => (row * longestS) / (rows - 1)),
    currentA: steady,
    meanA: steady,
    temperatureC: new Float64Array(rows).fill(cell.referenceC),
    cellV: [],
    fallV: [],
    weight: steady,
    ceilingFrom: rows,
    start: 0,
    end: rows - 1,
    deliveredAh: 0,
    spent: 0,
    tapGapV: 0,
    staleRows: 0,
    rowsOfLog: rows,
  };
  const volts = new Float64Array(rows);
  replay(cell, run, { capacityShare: 1, resistanceShare: 1, startCharge: 1 }, volts);
  const row = volts.findIndex((voltage) => voltage <= endV);
  if (row <= 0) return row < 0 ? (longestS * currentA) / 3600 : 0;
  const share = (volts[row - 1]! - endV) / (volts[row - 1]! - volts[row]!);
  return (
    ((run.timeS[row - 1]! + share * (run.timeS[row]! - run.timeS[row - 1]!)) * currentA) / 3600
  );
}
