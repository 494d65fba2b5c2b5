import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/** Parameters of the discharge equation of Tremblay & Dessaint for a whole block. */
export interface FilteredCurrentCurve {
  /** E0: constant voltage [V]. */
  readonly constantV: number;
  /** K: polarisation constant [V/A·h], also taken as polarisation resistance [Ω]. */
  readonly polarisationVPerAh: number;
  /** Q [A·h]. */
  readonly capacityAh: number;
  /** R [Ω]. */
  readonly resistanceOhm: number;
  /** A [V] and B [1/A·h] of the exponential zone. */
  readonly exponentialV: number;
  readonly exponentialPerAh: number;
}

/**
 * Discharge voltage: `V = E0 - R i - K Q/(Q - it) (it + i*) + A e^(-B it)`, i* the low-pass filtered current.
 *
 * Source: Tremblay & Dessaint, World Electric Vehicle J. 3 (2009), discharge equation (published).
 *
 * @param currentA i [A], not negative
 * @param filteredA i* [A]; equals i once the current has been constant for some time constants
 * @param drawnAh it: charge drawn so far [A·h], 0 to below Q
 */
export function filteredCurrentVoltageV(
  curve: FilteredCurrentCurve,
  currentA: number,
  filteredA: number,
  drawnAh: number,
): number {
  const left = curve.capacityAh / (curve.capacityAh - drawnAh);
  return (
    curve.constantV -
    curve.resistanceOhm * currentA -
    curve.polarisationVPerAh * left * (drawnAh + filteredA) +
    curve.exponentialV * Math.exp(-curve.exponentialPerAh * drawnAh)
  );
}

export const filteredCurrentVoltageFormula = defineFormula({
  id: 'filtered-current-voltage',
  title: 'Discharge voltage with a filtered current',
  equation: 'V = E0 - R i - K Q/(Q - it) (it + i*) + A e^(-B it)',
  inputs: {
    constantV: number('V', 0.1, 500, 'constant voltage, E0'),
    polarisationVPerAh: number('V/(A·h)', 0, 100, 'polarisation constant, K'),
    capacityAh: number('A·h', 1e-3, 10_000, 'capacity, Q'),
    resistanceOhm: number('Ω', 0, 100, 'resistance, R'),
    currentA: number('A', 0, 10_000, 'discharge current, i'),
    filteredA: number('A', 0, 10_000, 'filtered current, i*; equal to i once it has settled'),
    drawnAh: number('A·h', 0, 10_000, 'charge drawn so far, it'),
    exponentialV: number('V', 0, 100, 'height of the exponential zone, A', 0),
    exponentialPerAh: number('1/(A·h)', 0, 1000, 'inverse length of the exponential zone, B', 0),
  },
  outputs: { voltageV: ['V', 'voltage under load'] },
  assumptions: 'Constant temperature, constant parameters, no rate loss of capacity.',
  validity: 'Discharge only, until shortly before the capacity is used.',
  source: {
    class: 'published',
    citation: 'Tremblay & Dessaint, World Electric Vehicle J. 3 (2009), discharge equation',
  },
  compute: ({ currentA, filteredA, drawnAh, ...curve }) => {
    if (drawnAh >= curve.capacityAh) {
      return fail('drawnAh', 'is not below capacityAh', 'Give less charge drawn than there is.');
    }
    const left = curve.capacityAh / (curve.capacityAh - drawnAh);
    return {
      values: { voltageV: filteredCurrentVoltageV(curve, currentA, filteredA, drawnAh) },
      steps: [
        step('Fall by resistance', curve.resistanceOhm * currentA, 'V'),
        step('Fall by polarisation', curve.polarisationVPerAh * left * (drawnAh + filteredA), 'V'),
      ],
    };
  },
});
