import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/**
 * Voltage at a load of constant power: upper root of `V² - E V + P R = 0`, `V = (E + sqrt(E² - 4 P R))/2`.
 *
 * Source: Ohm's law with P = V I (derived). The lower root is unstable and never reached from rest.
 *
 * @param openCircuitV E [V], above 0
 * @param resistanceOhm R [Ω], not negative
 * @param powerW P [W], not negative
 * @returns voltage [V]; null where the power is above `E²/(4 R)` and the voltage collapses
 */
export function constantPowerVoltageV(
  openCircuitV: number,
  resistanceOhm: number,
  powerW: number,
): number | null {
  const under = openCircuitV ** 2 - 4 * powerW * resistanceOhm;
  return under < 0 ? null : (openCircuitV + Math.sqrt(under)) / 2;
}

export const constantPowerVoltageFormula = defineFormula({
  id: 'constant-power-voltage',
  title: 'Voltage at a load of constant power',
  equation: 'V = (E + sqrt(E² - 4 P R))/2, I = P/V',
  inputs: {
    openCircuitV: number('V', 0.1, 500, 'rest voltage'),
    resistanceOhm: number('Ω', 0, 100, 'resistance of the pack with leads'),
    powerW: number('W', 0, 1e6, 'power of the load'),
  },
  outputs: {
    voltageV: ['V', 'voltage at the load'],
    currentA: ['A', 'current'],
    largestPowerW: ['W', 'power above which the voltage collapses; none without resistance'],
  },
  assumptions: 'Steady state.',
  validity: 'Up to a quarter of E²/R.',
  source: { class: 'derived', citation: 'Ohm’s law with P = V I, upper root' },
  compute: ({ openCircuitV, resistanceOhm, powerW }) => {
    const largestPowerW = resistanceOhm > 0 ? openCircuitV ** 2 / (4 * resistanceOhm) : null;
    const voltageV = constantPowerVoltageV(openCircuitV, resistanceOhm, powerW);
    if (voltageV === null) {
      return fail(
        'powerW',
        `is ${powerW}, more than this source can give`,
        `Give powerW up to ${(largestPowerW ?? 0).toPrecision(4)} or a lower resistance.`,
      );
    }
    return {
      values: { voltageV, currentA: powerW / voltageV, largestPowerW },
      steps: [step('Current without sag P/E', powerW / openCircuitV, 'A')],
    };
  },
});
