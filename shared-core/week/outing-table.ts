import { bisectLast } from './bisect.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { runOuting } from '../run/run-outing.ts';

/** One outing at one temperature, as minutes against charge: from full down to where it ends. */
export interface OutingTable {
  /** Rising minutes and the charge of the pack then [%]. */
  readonly timeMin: Float64Array;
  readonly chargePercent: Float64Array;
  /** Minutes from full until a cutoff. */
  readonly fullMin: number;
  /** Charge at which it ends [%]. */
  readonly emptyPercent: number;
  readonly averageA: number;
}

/**
 * Runs the outing once from full to its cutoff. A later start is read off the same line: what is left at 70 % is what a
 * full pack still has once it is down to 70 %. That neglects the rest in between, which gives a little more (the reading
 * is on the safe side).
 */
export function outingTable(
  option: Option,
  machine: Machine,
  outing: Outing,
  temperatureC: number,
): OutingTable {
  const run = runOuting({ ...option, startPercent: 100 }, machine, {
    ...outing,
    ambientC: temperatureC,
    longestMin: 6000,
    restAfterMin: 0,
  });
  const { series } = run;
  const count = series.timeS.length;
  const timeMin = new Float64Array(count);
  for (let index = 0; index < count; index += 1) timeMin[index] = series.timeS[index]! / 60;
  return {
    timeMin,
    chargePercent: series.chargePercent,
    fullMin: run.runTimeMin,
    emptyPercent: run.remainingPercent,
    averageA: run.averageCurrentA,
  };
}

/** Minute on the full line at which the pack holds `percent`. */
function minuteAt(table: OutingTable, percent: number): number {
  const index = bisectLast(table.chargePercent.length, (at) => table.chargePercent[at]! >= percent);
  if (index < 0) return 0;
  if (index >= table.chargePercent.length - 1) return table.fullMin;
  const [high, low] = [table.chargePercent[index]!, table.chargePercent[index + 1]!];
  const share = high > low ? (high - percent) / (high - low) : 0;
  return table.timeMin[index]! + share * (table.timeMin[index + 1]! - table.timeMin[index]!);
}

/** Minutes the outing can last from a charge. */
export function availableMin(table: OutingTable, percent: number): number {
  return percent <= table.emptyPercent ? 0 : Math.max(0, table.fullMin - minuteAt(table, percent));
}

/** Charge after so many minutes [%]. */
export function percentAfter(table: OutingTable, percent: number, minutes: number): number {
  if (percent <= table.emptyPercent) return percent;
  const at = minuteAt(table, percent) + minutes;
  if (at >= table.fullMin) return table.emptyPercent;
  const index = bisectLast(table.timeMin.length, (row) => table.timeMin[row]! <= at);
  if (index >= table.timeMin.length - 1) return table.emptyPercent;
  const span = table.timeMin[index + 1]! - table.timeMin[index]!;
  const share = span > 0 ? (at - table.timeMin[index]!) / span : 0;
  return (
    table.chargePercent[index]! +
    share * (table.chargePercent[index + 1]! - table.chargePercent[index]!)
  );
}
