import { defineFormula } from '../define-formula.ts';
import { number, word } from '../input-spec.ts';
import { copperFactor } from './copper.ts';

/** Largest resistance of flexible (class 5) plain copper conductors at 20 °C [mm², Ω/km]. Source: IEC 60228 (published). */
export const flexibleConductors = [
  [0.5, 39],
  [0.75, 26],
  [1, 19.5],
  [1.5, 13.3],
  [2.5, 7.98],
  [4, 4.95],
  [6, 3.3],
  [10, 1.91],
  [16, 1.21],
  [25, 0.78],
  [35, 0.554],
  [50, 0.386],
] as const;

/**
 * Largest resistance of a flexible conductor at a temperature [Ω/km].
 *
 * Source: IEC 60228, class 5, with IEC 60028 for the temperature (published).
 *
 * @param areaMm2 nominal area of the standard [mm²]
 * @returns null where the standard has no such area
 */
export function flexibleOhmPerKm(areaMm2: number, temperatureC: number): number | null {
  const row = flexibleConductors.find(([area]) => Math.abs(area - areaMm2) < 1e-6);
  return row === undefined ? null : row[1] * copperFactor(temperatureC);
}

export const flexibleConductorFormula = defineFormula({
  id: 'flexible-conductor-resistance',
  title: 'Resistance of a flexible conductor (class 5)',
  equation: 'R = r20 (1 + 0.00393 (theta - 20)) L',
  inputs: {
    nominalMm2: word(
      flexibleConductors.map(([area]) => String(area)),
      'nominal area in mm²',
    ),
    lengthM: number('m', 0, 10_000, 'length of one conductor', 1000),
    temperatureC: number('°C', -60, 250, 'conductor temperature', 20),
  },
  outputs: {
    ohmPerKm: ['Ω/km', 'largest resistance per length'],
    resistanceOhm: ['Ω', 'largest resistance of one conductor'],
  },
  assumptions: 'Plain copper strands.',
  validity: 'Flexible wires to the standard; wires without a mark may be thinner or not of copper.',
  source: { class: 'published', citation: 'IEC 60228, class 5; IEC 60028' },
  compute: ({ nominalMm2, lengthM, temperatureC }) => {
    // The choices come from the table, so the row exists.
    const ohmPerKm = flexibleOhmPerKm(Number(nominalMm2), temperatureC) ?? Number.NaN;
    return { values: { ohmPerKm, resistanceOhm: (ohmPerKm * lengthM) / 1000 } };
  },
});
