import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Current at the instant two strings are joined in parallel: `I = (V1 - V2)/(R1 + R2)`.
 *
 * Source: Kirchhoff's voltage law (derived).
 *
 * @param firstV @param secondV rest voltages [V]
 * @param firstOhm @param secondOhm resistances with leads and joints [Ω], sum above 0
 * @returns current from the first into the second [A]; negative the other way
 */
export function joiningSurgeA(
  firstV: number,
  secondV: number,
  firstOhm: number,
  secondOhm: number,
): number {
  return (firstV - secondV) / (firstOhm + secondOhm);
}

export const joiningSurgeFormula = defineFormula({
  id: 'joining-surge',
  title: 'Surge when two strings are joined in parallel',
  equation: 'I = (V1 - V2)/(R1 + R2)',
  inputs: {
    firstV: number('V', 0, 500, 'rest voltage of the first string'),
    secondV: number('V', 0, 500, 'rest voltage of the second string'),
    firstOhm: number('Ω', 1e-5, 100, 'resistance of the first string with leads'),
    secondOhm: number('Ω', 1e-5, 100, 'resistance of the second string with leads'),
  },
  outputs: { surgeA: ['A', 'current from the first into the second'] },
  assumptions: 'Instant of joining, no inductance, no fuse opening.',
  validity: 'The first moment; the current falls as the charges even out.',
  source: { class: 'derived', citation: 'Kirchhoff’s voltage law' },
  compute: ({ firstV, secondV, firstOhm, secondOhm }) => ({
    values: { surgeA: joiningSurgeA(firstV, secondV, firstOhm, secondOhm) },
    steps: [
      step('Difference of the voltages', firstV - secondV, 'V'),
      step('Resistance of the loop', firstOhm + secondOhm, 'Ω'),
    ],
  }),
});
