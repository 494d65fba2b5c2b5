import { toRpm } from './angular-speed.ts';
import type { MagnetMotor } from './motor-inputs.ts';
import { motorInputs } from './motor-inputs.ts';
import { defineFormula } from '../define-formula.ts';
import { fail } from '../read-input.ts';

export interface MotorLimits {
  readonly stallA: number;
  readonly stallNm: number;
  readonly noLoadRadPerS: number;
  readonly bestCurrentA: number;
  readonly bestEfficiency: number;
}

/**
 * Ends and best point of a permanent-magnet motor at a voltage: `I_stall = V/R`, `w0 = (V - I0 R)/K`, best efficiency
 * `(1 - sqrt(I0/I_stall))²` at `sqrt(I0 I_stall)`.
 *
 * Source: textbook equations (published), their maximum (derived).
 *
 * @param voltageV V at the motor [V], above I0 R
 */
export function motorLimits(motor: MagnetMotor, voltageV: number): MotorLimits {
  const { resistanceOhm, constantVsPerRad, noLoadCurrentA } = motor;
  const stallA = voltageV / resistanceOhm;
  return {
    stallA,
    stallNm: constantVsPerRad * (stallA - noLoadCurrentA),
    noLoadRadPerS: (voltageV - noLoadCurrentA * resistanceOhm) / constantVsPerRad,
    bestCurrentA: Math.sqrt(noLoadCurrentA * stallA),
    bestEfficiency: (1 - Math.sqrt(noLoadCurrentA / stallA)) ** 2,
  };
}

export const motorLimitsFormula = defineFormula({
  id: 'motor-limits',
  title: 'Stall, free speed and best efficiency of a motor',
  equation:
    'I_stall = V/R; w0 = (V - I0 R)/K; I_best = sqrt(I0 I_stall); eta = (1 - sqrt(I0/I_stall))²',
  inputs: motorInputs,
  outputs: {
    stallA: ['A', 'current when the motor cannot turn'],
    stallNm: ['N·m', 'torque when it cannot turn'],
    noLoadRpm: ['rpm', 'speed without load'],
    bestCurrentA: ['A', 'current of best efficiency'],
    bestEfficiency: ['1', 'best efficiency'],
  },
  assumptions: 'Permanent magnets, no saturation, constant friction torque.',
  validity: 'Any voltage above I0 R; heat and commutation may forbid the stall current.',
  source: { class: 'published', citation: 'textbook equations of the permanent-magnet motor' },
  compute: ({ voltageV, ...motor }) => {
    const limits = motorLimits(motor, voltageV);
    if (limits.stallA <= motor.noLoadCurrentA) {
      return fail(
        'noLoadCurrentA',
        'is not below the stall current',
        'Give a smaller no-load current or resistance.',
      );
    }
    const { noLoadRadPerS, ...rest } = limits;
    return { values: { ...rest, noLoadRpm: toRpm(noLoadRadPerS) } };
  },
});
