import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { nominalVoltageV } from '../pack/nominal-voltage.ts';
import { runOuting } from '../run/run-outing.ts';

/** One outing at one temperature: how long it can last from a charge, and the charge it ends at. */
export interface OutingTable {
  /** Charges of the rested pack at the start, falling [%]. */
  readonly startPercent: readonly number[];
  /** Minutes until a cutoff, or the longest use, from each of them. */
  readonly minutes: readonly number[];
  /** Charge left then [%]. */
  readonly endPercent: readonly number[];
}

/** Starts that are run; between them minutes and end are read off straight lines. */
const starts = [100, 85, 70, 55, 40, 25, 10] as const;

/** Bus movement allowed per step, per volt of the pack: coarser than on screen, minutes move by a fraction of a percent. */
const toleranceShare = 0.06 / 24;

/**
 * Runs the outing from several charges, each to its cutoff or to the longest time any use asks for: what would come
 * after that no week meets.
 *
 * @param longestMin longest use of this outing [min], above 0
 */
export function outingTable(
  option: Option,
  machine: Machine,
  outing: Outing,
  temperatureC: number,
  longestMin: number,
): OutingTable {
  const there: Outing = { ...outing, ambientC: temperatureC, longestMin, restAfterMin: 0 };
  const stepping = {
    kind: 'adaptive',
    toleranceV: toleranceShare * nominalVoltageV(option),
  } as const;
  const minutes: number[] = [];
  const endPercent: number[] = [];
  for (const startPercent of starts) {
    const spent = minutes.at(-1) === 0;
    const run = spent
      ? null
      : runOuting({ ...option, startPercent }, machine, there, { full: false, stepping });
    minutes.push(run === null ? 0 : Math.min(run.runTimeMin, minutes.at(-1) ?? Infinity));
    endPercent.push(run === null ? startPercent : run.remainingPercent);
  }
  return { startPercent: starts, minutes, endPercent };
}

/** Minutes the outing can last from a charge. */
export function availableMin(table: OutingTable, percent: number): number {
  return readAt(table, percent, table.minutes);
}

/**
 * Charge after so many minutes [%]: on a straight line between the start and the charge at the end, which an outing of
 * repeated legs follows.
 */
export function percentAfter(table: OutingTable, percent: number, minutes: number): number {
  const all = availableMin(table, percent);
  if (all <= 0) return percent;
  const end = Math.min(percent, readAt(table, percent, table.endPercent));
  return percent - (percent - end) * Math.min(1, minutes / all);
}

function readAt(table: OutingTable, percent: number, column: readonly number[]): number {
  const { startPercent } = table;
  if (percent >= startPercent[0]!) return column[0]!;
  for (let index = 1; index < startPercent.length; index += 1) {
    const [high, low] = [startPercent[index - 1]!, startPercent[index]!];
    if (percent >= low)
      return (
        column[index]! + ((percent - low) / (high - low)) * (column[index - 1]! - column[index]!)
      );
  }
  return column.at(-1)!;
}
