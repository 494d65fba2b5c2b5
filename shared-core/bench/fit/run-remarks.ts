import type { Block } from '../../plan/schema/block.ts';
import type { Decoded } from './decode.ts';
import type { FitRemark } from './fit-remark.ts';
import type { FitRun } from './fit-run.ts';
import type { Prediction } from './predict.ts';
import type { RunStart } from './run-start.ts';

/** Scatter between runs that is worth saying [%]. */
const worthSayingPercent = 3;

/** A run that began this near to full began full, as far as volts can tell. */
const asGoodAsFull = 0.03;

/** Remarks about the runs themselves: rates, ends, temperature, rest, rows that did not count. */
export function runRemarks(
  runs: readonly FitRun[],
  { cell }: Decoded,
  replays: readonly Prediction[],
  starts: readonly RunStart[],
  request: { readonly block: Block; readonly temperatureC: number },
  outliers: number,
): FitRemark[] {
  const remarks: FitRemark[] = [];
  const currents = runs.map(
    (run) => (run.deliveredAh * 3600) / (run.timeS[run.end]! - run.timeS[run.start]!),
  );
  if (Math.max(...currents) < 1.5 * Math.min(...currents))
    remarks.push({ kind: 'one-rate', currentA: currents[0]! });
  const left = 100 * (1 - Math.max(...runs.map((run) => run.deliveredAh)) / cell.capacityAh);
  const lowest = Math.min(
    ...runs.map((run) => Math.min(...run.cellV.map((column) => column[run.end]!))),
  );
  if (left > 4) remarks.push({ kind: 'ends-early', chargePercent: left, voltageV: lowest });
  if (runs.some((run) => run.temperatureC === null))
    remarks.push({ kind: 'no-temperature', temperatureC: request.temperatureC });
  const off = replays.map((replay) => replay.timePercent);
  const apart = Math.max(...off) - Math.min(...off);
  if (runs.length > 1 && apart > worthSayingPercent)
    remarks.push({ kind: 'runs-differ', percent: apart });
  const beganFull = (run: FitRun, index: number) =>
    starts[index]!.known !== 'given' && run.spent < asGoodAsFull;
  if (runs.every(beganFull)) remarks.push({ kind: 'taken-as-full' });
  else
    runs.forEach((run, index) =>
      remarks.push({
        kind: 'began-at',
        run: run.name,
        percent: 100 * (1 - run.spent),
        known: starts[index]!.known,
      }),
    );
  if (
    ['agm', 'gel', 'flooded'].includes(request.block.chemistry) &&
    runs.some((run) => run.start > 0 || run.end < run.timeS.length - 1)
  )
    remarks.push({ kind: 'rest-not-used' });
  const gapV = Math.max(...runs.map((run) => run.tapGapV));
  if (Math.abs(gapV) > 0.02) remarks.push({ kind: 'taps-differ', gapV });
  const stale = runs.reduce((sum, run) => sum + run.staleRows, 0);
  if (stale > 0) remarks.push({ kind: 'stale', rows: stale });
  if (outliers > 0) remarks.push({ kind: 'outliers', rows: outliers });
  return remarks;
}
