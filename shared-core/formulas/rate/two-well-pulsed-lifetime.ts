import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';
import type { Wells } from './two-well.ts';
import { advanceWells, fullWells } from './two-well.ts';
import { wellInputs, wellSource } from './two-well-inputs.ts';
import { wellLifetimeH } from './two-well-lifetime.ts';

/** More cycles than this are refused instead of computed for minutes. */
const mostCycles = 1_000_000;

/**
 * Time until the available well is empty under a load that is switched on and off, starting with on.
 *
 * Each leg is advanced by its closed form, and the end is the root inside the on-leg in which the well runs dry; no
 * step size enters.
 * Source: Manwell & McGowan 1993 (published), closed-form stepping.
 *
 * @param currentA I while on [A], above 0
 * @param onH @param offH length of the legs [h], on above 0, off not negative
 * @returns time from the start including the rests [h]; null for more than a million cycles
 */
export function pulsedWellLifetimeH(
  wells: Wells,
  currentA: number,
  onH: number,
  offH: number,
): number | null {
  if (wells.capacityAh / (currentA * onH) > mostCycles) return null;
  let charge = fullWells(wells);
  let timeH = 0;
  for (let cycle = 0; cycle <= mostCycles; cycle += 1) {
    const after = advanceWells(wells, charge, currentA, onH);
    if (after.availableAh <= 0) return timeH + wellLifetimeH(wells, currentA, charge);
    charge = advanceWells(wells, after, 0, offH);
    timeH += onH + offH;
  }
  return null;
}

export const twoWellPulsedLifetimeFormula = defineFormula({
  id: 'two-well-pulsed-lifetime',
  title: 'Running time under a load switched on and off (two wells)',
  equation: 'closed form leg by leg, root of q1(t) = 0 in the last on-leg',
  inputs: {
    ...wellInputs,
    currentA: number('A', 1e-6, 10_000, 'current while on'),
    onMin: number('min', 1e-4, 1e5, 'length of the on-leg, which comes first'),
    offMin: number('min', 0, 1e5, 'length of the off-leg'),
  },
  outputs: {
    timeH: ['h', 'time until the available well is empty, rests included'],
    deliveredAh: ['A·h', 'charge delivered'],
  },
  assumptions: 'Full block, constant parameters, nothing drawn while off.',
  validity: 'Currents like those the parameters were fitted to.',
  source: wellSource,
  compute: ({ currentA, onMin, offMin, ...wells }) => {
    const onH = onMin / 60;
    const offH = offMin / 60;
    const timeH = pulsedWellLifetimeH(wells, currentA, onH, offH);
    if (timeH === null) {
      return fail(
        'onMin',
        `asks for more than ${mostCycles} cycles`,
        'Give a longer on-leg or a larger current.',
      );
    }
    const cycles = Math.floor(timeH / (onH + offH));
    const deliveredAh = currentA * (cycles * onH + Math.min(onH, timeH - cycles * (onH + offH)));
    return {
      values: { timeH, deliveredAh },
      steps: [
        step('Full cycles before the last', cycles, '1'),
        step('Time at the same current without rests', wellLifetimeH(wells, currentA), 'h'),
      ],
    };
  },
});
