import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { oneRound } from './compare-ways.ts';
import { outingInWay } from './load-ways.ts';

export type AverageScale =
  | {
      readonly ok: true;
      /** Road resistance against the table that makes the model agree [%]. */
      readonly resistancePercent: number;
      /** What the model draws as it stands [A]. */
      readonly modelA: number;
    }
  | { readonly ok: false; readonly reason: 'not-computable' | 'out-of-range' };

const rangePercent = { low: 10, high: 1000 } as const;
const rounds = 24;

/**
 * Road resistance with which the model draws a given average current over one round of an outing, starts and halts
 * included, by bisection: the current rises with the resistance.
 *
 * @param wantedA average from the pack for the motors over a round, above 0 [A]
 * @returns out-of-range where no resistance between 10 and 1000 % of the table explains it
 * Source: derived.
 */
export function scaleToAverage(
  machine: Machine,
  option: Option,
  outing: Outing,
  wantedA: number,
): AverageScale {
  const { drive } = machine;
  const { outing: driven, known } = outingInWay(outing, 'model');
  if (drive === null || known === 0) return { ok: false, reason: 'not-computable' };
  const at = (resistancePercent: number): number | null =>
    oneRound({ ...machine, drive: { ...drive, resistancePercent } }, option, driven)?.averageA ??
    null;
  const modelA = at(drive.resistancePercent);
  const lowestA = at(rangePercent.low);
  const highestA = at(rangePercent.high);
  if (modelA === null || lowestA === null || highestA === null)
    return { ok: false, reason: 'not-computable' };
  if (wantedA < lowestA || wantedA > highestA) return { ok: false, reason: 'out-of-range' };
  let { low, high }: { low: number; high: number } = rangePercent;
  for (let round = 0; round < rounds; round += 1) {
    // Percentages span two decades, so their ratio is halved.
    const middle = Math.sqrt(low * high);
    if ((at(middle) ?? 0) < wantedA) low = middle;
    else high = middle;
  }
  return { ok: true, resistancePercent: Math.sqrt(low * high), modelA };
}
