import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Voltage some time after a load came on: `V = OCV - I R - I R1 (1 - e^(-t/tau))`.
 *
 * Source: solution of `v_p' = (I R1 - v_p)/tau` from rest (derived).
 *
 * @param openCircuitV OCV [V]
 * @param currentA I [A], positive while discharging
 * @param resistanceOhm R [Ω]
 * @param polarisationOhm R1 [Ω]
 * @param polarisationS tau [s], above 0
 * @param timeS time since the load came on [s]
 */
export function loadedVoltageV(
  openCircuitV: number,
  currentA: number,
  resistanceOhm: number,
  polarisationOhm: number,
  polarisationS: number,
  timeS: number,
): number {
  const settled = -Math.expm1(-timeS / polarisationS);
  return openCircuitV - currentA * (resistanceOhm + polarisationOhm * settled);
}

export const loadedVoltageFormula = defineFormula({
  id: 'loaded-voltage',
  title: 'Voltage after a load came on',
  equation: 'V = OCV - I R - I R1 (1 - e^(-t/tau))',
  inputs: {
    openCircuitV: number('V', 0, 500, 'rest voltage'),
    currentA: number('A', -10_000, 10_000, 'current, positive while discharging'),
    resistanceOhm: number('Ω', 0, 100, 'resistance that acts at once'),
    polarisationOhm: number('Ω', 0, 100, 'resistance that builds up', 0),
    polarisationS: number('s', 1e-3, 1e5, 'time constant of the build-up', 60),
    timeS: number('s', 0, 1e6, 'time since the load came on', 0),
  },
  outputs: { voltageV: ['V', 'voltage under load'], sagV: ['V', 'fall below the rest voltage'] },
  assumptions: 'Rested before the load; charge hardly changes meanwhile.',
  validity: 'Seconds to minutes; beyond that the charge drawn matters.',
  source: {
    class: 'derived',
    citation: 'one resistor and one resistor-capacitor element in series',
  },
  compute: (inputs) => {
    const { openCircuitV, currentA, resistanceOhm, polarisationOhm, polarisationS, timeS } = inputs;
    const voltageV = loadedVoltageV(
      openCircuitV,
      currentA,
      resistanceOhm,
      polarisationOhm,
      polarisationS,
      timeS,
    );
    return {
      values: { voltageV, sagV: openCircuitV - voltageV },
      steps: [step('Fall at once I R', currentA * resistanceOhm, 'V')],
    };
  },
});
