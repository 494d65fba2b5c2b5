import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/** Parameters of Shepherd's discharge curve for a whole block. */
export interface ShepherdCurve {
  /** Es: constant voltage [V]. */
  readonly constantV: number;
  /** K: polarisation against the current through what is left of the material [Ω]. */
  readonly polarisationOhm: number;
  /** Q: charge of the active material [A·h]. */
  readonly capacityAh: number;
  /** N: inner resistance [Ω]. */
  readonly resistanceOhm: number;
  /** A: height of the first fall [V]. */
  readonly firstFallV: number;
  /** B: exponent of the first fall over the whole charge [1]. */
  readonly firstFallExponent: number;
}

/**
 * Voltage during a discharge at constant current: `V = Es - K Q/(Q - It) I - N I + A e^(-B It/Q)`.
 *
 * Source: Shepherd, J. Electrochem. Soc. 112 (1965) 657 (published).
 *
 * @param currentA I [A], not negative
 * @param drawnAh It: charge drawn so far [A·h], 0 to below Q
 */
export function shepherdVoltageV(curve: ShepherdCurve, currentA: number, drawnAh: number): number {
  const left = curve.capacityAh / (curve.capacityAh - drawnAh);
  return (
    curve.constantV -
    curve.polarisationOhm * left * currentA -
    curve.resistanceOhm * currentA +
    curve.firstFallV * Math.exp((-curve.firstFallExponent * drawnAh) / curve.capacityAh)
  );
}

export const shepherdVoltageFormula = defineFormula({
  id: 'shepherd-voltage',
  title: 'Voltage during a discharge at constant current (Shepherd)',
  equation: 'V = Es - K Q/(Q - It) I - N I + A e^(-B It/Q)',
  inputs: {
    constantV: number('V', 0.1, 500, 'constant voltage, Es'),
    polarisationOhm: number('Ω', 0, 100, 'polarisation, K'),
    capacityAh: number('A·h', 1e-3, 10_000, 'charge of the active material, Q'),
    resistanceOhm: number('Ω', 0, 100, 'inner resistance, N'),
    currentA: number('A', 0, 10_000, 'discharge current, I'),
    drawnAh: number('A·h', 0, 10_000, 'charge drawn so far, It'),
    firstFallV: number('V', 0, 100, 'height of the first fall, A', 0),
    firstFallExponent: number('1', 0, 1000, 'exponent of the first fall, B', 0),
  },
  outputs: { voltageV: ['V', 'voltage under load'] },
  assumptions: 'Constant current and temperature, constant parameters.',
  validity: 'Discharge only, until shortly before all material is used.',
  source: { class: 'published', citation: 'Shepherd, J. Electrochem. Soc. 112 (1965) 657' },
  compute: ({ currentA, drawnAh, ...curve }) => {
    if (drawnAh >= curve.capacityAh) {
      return fail('drawnAh', 'is not below capacityAh', 'Give less charge drawn than there is.');
    }
    const knee =
      ((curve.polarisationOhm * curve.capacityAh) / (curve.capacityAh - drawnAh)) * currentA;
    return {
      values: { voltageV: shepherdVoltageV(curve, currentA, drawnAh) },
      steps: [
        step('Fall by polarisation', knee, 'V'),
        step('Fall by resistance', curve.resistanceOhm * currentA, 'V'),
      ],
    };
  },
});
