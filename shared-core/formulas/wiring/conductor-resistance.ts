import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { copperConductivity, copperFactor } from './copper.ts';

/**
 * Resistance of a copper conductor of any area [Ω]: `R = L/(58 A) (1 + alpha (theta - 20))`.
 *
 * Source: IEC 60028 (published). Real strands are some percent higher; the tables know them.
 *
 * @param areaMm2 A [mm²], above 0
 * @param lengthM L of one conductor [m]
 * @param temperatureC theta [°C]
 */
export function copperResistanceOhm(
  areaMm2: number,
  lengthM: number,
  temperatureC: number,
): number {
  return (lengthM / (copperConductivity * areaMm2)) * copperFactor(temperatureC);
}

export const conductorResistanceFormula = defineFormula({
  id: 'conductor-resistance',
  title: 'Resistance of a copper conductor',
  equation: 'R = L/(58 A) (1 + 0.00393 (theta - 20))',
  inputs: {
    areaMm2: number('mm²', 0.01, 1000, 'copper area'),
    lengthM: number('m', 0, 10_000, 'length of one conductor'),
    temperatureC: number('°C', -60, 250, 'conductor temperature', 20),
  },
  outputs: { resistanceOhm: ['Ω', 'resistance of one conductor'] },
  assumptions: 'Annealed copper.',
  validity: 'Where the construction is not known; otherwise use the tables of classes and gauges.',
  source: { class: 'published', citation: 'IEC 60028' },
  compute: ({ areaMm2, lengthM, temperatureC }) => ({
    values: { resistanceOhm: copperResistanceOhm(areaMm2, lengthM, temperatureC) },
    steps: [step('At 20 °C', copperResistanceOhm(areaMm2, lengthM, 20), 'Ω')],
  }),
});
