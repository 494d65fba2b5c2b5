import { toRadPerS } from './angular-speed.ts';
import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/**
 * Constant of a permanent-magnet motor: `K = (V - I0 R)/w0`. In SI the voltage and the torque constant are equal.
 *
 * Source: motor equation without load (derived from `V = I R + K w`, published in textbooks).
 *
 * @param voltageV V [V]
 * @param noLoadRpm speed without load [rpm], above 0
 * @param noLoadCurrentA I0 [A]
 * @param resistanceOhm R [Ω]
 * @returns K [V·s/rad = N·m/A]
 */
export function motorConstantVsPerRad(
  voltageV: number,
  noLoadRpm: number,
  noLoadCurrentA: number,
  resistanceOhm: number,
): number {
  return (voltageV - noLoadCurrentA * resistanceOhm) / toRadPerS(noLoadRpm);
}

export const motorConstantFormula = defineFormula({
  id: 'motor-constant',
  title: 'Constant of a permanent-magnet motor',
  equation: 'K = (V - I0 R)/w0',
  inputs: {
    voltageV: number('V', 0.1, 500, 'voltage at which the speed is known'),
    speedRpm: number('rpm', 1, 100_000, 'speed without load'),
    noLoadCurrentA: number('A', 0, 1000, 'current without load', 0),
    resistanceOhm: number('Ω', 0, 100, 'resistance of the motor', 0),
  },
  outputs: {
    constantVsPerRad: ['V·s/rad', 'voltage constant, equal to the torque constant in N·m/A'],
    speedPerVoltRpm: ['rpm/V', 'speed for each volt'],
  },
  assumptions: 'Permanent magnets, no saturation.',
  validity: 'Brushed motors, and brushless ones seen from their controller’s supply.',
  source: { class: 'derived', citation: 'motor equation without load' },
  compute: ({ voltageV, speedRpm, noLoadCurrentA, resistanceOhm }) => {
    const constant = motorConstantVsPerRad(voltageV, speedRpm, noLoadCurrentA, resistanceOhm);
    if (constant <= 0) {
      return fail(
        'noLoadCurrentA',
        'times the resistance takes all the voltage',
        'Give a smaller no-load current or resistance.',
      );
    }
    return {
      values: { constantVsPerRad: constant, speedPerVoltRpm: speedRpm / voltageV },
      steps: [
        step('Turning speed', toRadPerS(speedRpm), 'rad/s'),
        step('Voltage behind the resistance', voltageV - noLoadCurrentA * resistanceOhm, 'V'),
      ],
    };
  },
});
