import { toRpm } from './angular-speed.ts';
import type { MagnetMotor } from './motor-inputs.ts';
import { motorInputs } from './motor-inputs.ts';
import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/** Steady state of a motor. */
export interface MotorPoint {
  readonly currentA: number;
  readonly speedRadPerS: number;
  /** Power at the shaft [W]. */
  readonly shaftW: number;
  readonly inputW: number;
  readonly heatW: number;
}

/**
 * Steady state of a permanent-magnet motor from voltage and shaft torque:
 * `I = I0 + T/K`, `w = (V - I R)/K`.
 *
 * Source: motor equations `V = I R + K w`, `T = K (I - I0)` of the textbooks (published).
 *
 * @param voltageV V at the motor [V]
 * @param torqueNm T at the shaft [N·m], not negative
 * @returns a negative speed where the load turns the motor backwards
 */
export function motorPoint(motor: MagnetMotor, voltageV: number, torqueNm: number): MotorPoint {
  const { resistanceOhm, constantVsPerRad, noLoadCurrentA } = motor;
  const currentA = noLoadCurrentA + torqueNm / constantVsPerRad;
  const speedRadPerS = (voltageV - currentA * resistanceOhm) / constantVsPerRad;
  const inputW = voltageV * currentA;
  const shaftW = torqueNm * speedRadPerS;
  return { currentA, speedRadPerS, shaftW, inputW, heatW: inputW - shaftW };
}

export const motorPointFormula = defineFormula({
  id: 'motor-point',
  title: 'Current and speed of a motor under torque',
  equation: 'I = I0 + T/K; w = (V - I R)/K',
  inputs: { ...motorInputs, torqueNm: number('N·m', 0, 10_000, 'torque at the shaft') },
  outputs: {
    currentA: ['A', 'motor current'],
    speedRpm: ['rpm', 'speed'],
    shaftW: ['W', 'power at the shaft'],
    inputW: ['W', 'electrical power'],
    heatW: ['W', 'power turned to heat'],
    efficiency: ['1', 'shaft against electrical power'],
  },
  assumptions: 'Permanent magnets, no saturation, constant friction torque.',
  validity: 'Up to the stall torque.',
  source: { class: 'published', citation: 'textbook equations of the permanent-magnet motor' },
  compute: ({ voltageV, torqueNm, ...motor }) => {
    const point = motorPoint(motor, voltageV, torqueNm);
    if (point.speedRadPerS < 0) {
      const stallNm =
        motor.constantVsPerRad * (voltageV / motor.resistanceOhm - motor.noLoadCurrentA);
      return fail(
        'torqueNm',
        `is ${torqueNm}, more than the motor holds at this voltage`,
        `Give torqueNm up to ${Math.max(0, stallNm).toPrecision(4)}.`,
      );
    }
    return {
      values: {
        currentA: point.currentA,
        speedRpm: toRpm(point.speedRadPerS),
        shaftW: point.shaftW,
        inputW: point.inputW,
        heatW: point.heatW,
        efficiency: point.inputW > 0 ? point.shaftW / point.inputW : 0,
      },
      steps: [
        step('Voltage behind the resistance', voltageV - point.currentA * motor.resistanceOhm, 'V'),
        step('Turning speed', point.speedRadPerS, 'rad/s'),
      ],
    };
  },
});
