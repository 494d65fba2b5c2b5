import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Time a block runs at constant current: `t = H (C/(I H))^k`.
 *
 * The rated time H must stand in the law; without it the capacity would hold at 1 A instead of at its rated current.
 * Assumes full charge, rated temperature, constant current within the range the exponent was found in.
 * Source: Omar et al., Energies 6 (2013) 5625 (published).
 *
 * @param capacityAh C, capacity at the rated time [A·h], above 0
 * @param ratedHours H [h], above 0
 * @param currentA I [A], above 0
 * @param exponent k [1], 1 to 2
 * @returns time [h]
 */
export function peukertTimeH(
  capacityAh: number,
  ratedHours: number,
  currentA: number,
  exponent: number,
): number {
  return ratedHours * (capacityAh / (currentA * ratedHours)) ** exponent;
}

export const peukertTimeFormula = defineFormula({
  id: 'peukert-time',
  title: 'Running time at constant current (Peukert)',
  equation: 't = H (C/(I H))^k',
  inputs: {
    capacityAh: number('A·h', 0.01, 10_000, 'capacity at the rated time'),
    ratedHours: number('h', 0.1, 200, 'time over which the capacity is stated', 20),
    currentA: number('A', 0.0001, 100_000, 'constant discharge current'),
    exponent: number('1', 1, 2, 'Peukert exponent'),
  },
  outputs: {
    timeH: ['h', 'time until the block is empty'],
    deliveredAh: ['A·h', 'charge delivered in that time'],
  },
  assumptions: 'Full block at its rated temperature, constant current.',
  validity: 'A narrow range of currents at constant temperature; not for stop-and-go loads.',
  source: { class: 'published', citation: 'Omar et al., Energies 6 (2013) 5625' },
  compute: ({ capacityAh, ratedHours, currentA, exponent }) => {
    const timeH = peukertTimeH(capacityAh, ratedHours, currentA, exponent);
    return {
      values: { timeH, deliveredAh: currentA * timeH },
      steps: [
        step('Rated current C/H', capacityAh / ratedHours, 'A'),
        step('Current against rated current', (currentA * ratedHours) / capacityAh, '1'),
        step('Time without rate loss C/I', capacityAh / currentA, 'h'),
      ],
    };
  },
});
