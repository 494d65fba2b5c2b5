import { findRoot } from '../../numerics/find-root.ts';
import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import type { WellCharge, Wells } from './two-well.ts';
import { advanceWells, fullWells } from './two-well.ts';
import { wellInputs, wellSource } from './two-well-inputs.ts';

/**
 * Time until the available well is empty at constant current: the root of `q1(t) = 0`.
 *
 * The root is unique: `q1` is a falling line plus one exponential, so it crosses zero once, at the latest when all the
 * charge is drawn.
 * Source: Manwell & McGowan 1993 (published), root found numerically.
 *
 * @param currentA I [A], above 0
 * @param start charge at the beginning; full when absent
 * @returns time [h]; 0 where the available well is empty at the start
 */
export function wellLifetimeH(
  wells: Wells,
  currentA: number,
  start: WellCharge = fullWells(wells),
): number {
  if (start.availableAh <= 0) return 0;
  const latest = (start.availableAh + start.boundAh) / currentA;
  const root = findRoot(
    (timeH) => advanceWells(wells, start, currentA, timeH).availableAh,
    0,
    latest,
    latest * 1e-14,
  );
  // With c = 1 the crossing lies at `latest` itself, where rounding may hide the change of sign.
  return root.ok ? root.x : latest;
}

export const twoWellLifetimeFormula = defineFormula({
  id: 'two-well-lifetime',
  title: 'Running time at constant current (two wells)',
  equation: 'root of q1(t) = 0',
  inputs: {
    ...wellInputs,
    currentA: number('A', 1e-6, 10_000, 'constant discharge current'),
  },
  outputs: {
    timeH: ['h', 'time until the available well is empty'],
    deliveredAh: ['A·h', 'charge delivered'],
    boundAh: ['A·h', 'charge left in the bound well'],
  },
  assumptions: 'Full block, constant parameters.',
  validity: 'Currents like those the parameters were fitted to.',
  source: wellSource,
  compute: ({ currentA, ...wells }) => {
    const timeH = wellLifetimeH(wells, currentA);
    const deliveredAh = currentA * timeH;
    return {
      values: { timeH, deliveredAh, boundAh: Math.max(0, wells.capacityAh - deliveredAh) },
    };
  },
});
