import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { oneRound } from './compare-ways.ts';
import { outingInWay, sharedLegs } from './load-ways.ts';
import type { LoadWay } from './load-ways.ts';

export type AverageScale =
  | {
      readonly ok: true;
      /** Road resistance against the table that makes the model agree [%]. */
      readonly resistancePercent: number;
      /** Average over the legs known both ways: as read, and of the model as it stands [A]. */
      readonly readA: number;
      readonly modelA: number;
    }
  | { readonly ok: false; readonly reason: 'not-computable' | 'nothing-shared' | 'out-of-range' };

const rangePercent = { low: 10, high: 1000 } as const;
const rounds = 24;

/**
 * Road resistance with which the model draws the average current that another way of giving the load tells, over the legs
 * known both ways, starts and halts included, by bisection: the current rises with the resistance.
 *
 * @param way amps or log
 * @returns nothing-shared where no leg is known both ways; out-of-range where no resistance between 10 and 1000 % of the
 * table explains it
 * Source: derived.
 */
export function scaleToAverage(
  machine: Machine,
  option: Option,
  outing: Outing,
  way: LoadWay,
): AverageScale {
  const { drive } = machine;
  if (drive === null) return { ok: false, reason: 'not-computable' };
  const legs = [...sharedLegs(outing, way)];
  if (legs.length === 0) return { ok: false, reason: 'nothing-shared' };
  const driven = outingInWay({ ...outing, legs }, 'model').outing;
  const read = oneRound(machine, option, outingInWay({ ...outing, legs }, way).outing);
  const at = (resistancePercent: number): number | null =>
    oneRound({ ...machine, drive: { ...drive, resistancePercent } }, option, driven)?.averageA ??
    null;
  const modelA = at(drive.resistancePercent);
  const lowestA = at(rangePercent.low);
  const highestA = at(rangePercent.high);
  if (read === null || modelA === null || lowestA === null || highestA === null)
    return { ok: false, reason: 'not-computable' };
  const readA = read.averageA;
  if (readA < lowestA || readA > highestA) return { ok: false, reason: 'out-of-range' };
  let { low, high }: { low: number; high: number } = rangePercent;
  for (let round = 0; round < rounds; round += 1) {
    // Percentages span two decades, so their ratio is halved.
    const middle = Math.sqrt(low * high);
    if ((at(middle) ?? 0) < readA) low = middle;
    else high = middle;
  }
  return { ok: true, resistancePercent: Math.sqrt(low * high), readA, modelA };
}
