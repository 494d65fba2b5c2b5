import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/**
 * Peukert exponent from two ratings: `k = ln(t1/t2)/ln(I2/I1)` with `I = C/t`.
 *
 * Source: the law written for two points (derived).
 *
 * @param firstCapacityAh @param firstHours one rating [A·h], [h], above 0
 * @param secondCapacityAh @param secondHours another [A·h], [h], above 0, at another current
 * @returns exponent [1]; below 1 where the faster rating gives more charge; not finite where the currents are equal
 */
export function peukertExponent(
  firstCapacityAh: number,
  firstHours: number,
  secondCapacityAh: number,
  secondHours: number,
): number {
  const firstA = firstCapacityAh / firstHours;
  const secondA = secondCapacityAh / secondHours;
  return Math.log(firstHours / secondHours) / Math.log(secondA / firstA);
}

export const peukertExponentFormula = defineFormula({
  id: 'peukert-exponent',
  title: 'Peukert exponent from two ratings',
  equation: 'k = ln(t1/t2)/ln(I2/I1), I = C/t',
  inputs: {
    firstCapacityAh: number('A·h', 0.01, 10_000, 'capacity of the first rating'),
    firstHours: number('h', 0.01, 200, 'time of the first rating'),
    secondCapacityAh: number('A·h', 0.01, 10_000, 'capacity of the second rating'),
    secondHours: number('h', 0.01, 200, 'time of the second rating'),
  },
  outputs: { exponent: ['1', 'Peukert exponent'] },
  assumptions: 'Both ratings at the same temperature, to comparable end voltages.',
  validity: 'Between the two currents and not far beyond.',
  source: { class: 'derived', citation: 'Peukert’s law written for two points' },
  compute: ({ firstCapacityAh, firstHours, secondCapacityAh, secondHours }) => {
    const firstA = firstCapacityAh / firstHours;
    const secondA = secondCapacityAh / secondHours;
    if (Math.abs(Math.log(secondA / firstA)) < 1e-9) {
      return fail(
        'secondCapacityAh',
        'makes both currents equal',
        'Give a second rating at another current.',
      );
    }
    return {
      values: {
        exponent: peukertExponent(firstCapacityAh, firstHours, secondCapacityAh, secondHours),
      },
      steps: [step('First current', firstA, 'A'), step('Second current', secondA, 'A')],
    };
  },
});
