import { toRadPerS } from './angular-speed.ts';
import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Speed over ground: `v = w/G d/2`, wheels rolling without slip.
 *
 * Source: kinematics (derived).
 *
 * @param motorRpm motor speed [rpm]
 * @param gearRatio G, motor turns for one wheel turn [1], above 0
 * @param wheelDiameterM d [m]
 * @returns speed [m/s]
 */
export function wheelSpeedMPerS(
  motorRpm: number,
  gearRatio: number,
  wheelDiameterM: number,
): number {
  return (toRadPerS(motorRpm) / gearRatio) * (wheelDiameterM / 2);
}

export const wheelSpeedFormula = defineFormula({
  id: 'wheel-speed',
  title: 'Speed over ground from motor speed',
  equation: 'v = w d/(2 G)',
  inputs: {
    motorRpm: number('rpm', 0, 100_000, 'motor speed'),
    gearRatio: number('1', 0.05, 1000, 'motor turns for one wheel turn'),
    wheelDiameterM: number('m', 0.01, 2, 'wheel diameter'),
  },
  outputs: {
    speedMPerS: ['m/s', 'speed over ground'],
    speedKmPerH: ['km/h', 'the same'],
    wheelRpm: ['rpm', 'wheel speed'],
  },
  assumptions: 'No slip, loaded diameter.',
  validity: 'Always.',
  source: { class: 'derived', citation: 'kinematics of a rolling wheel' },
  compute: ({ motorRpm, gearRatio, wheelDiameterM }) => {
    const speedMPerS = wheelSpeedMPerS(motorRpm, gearRatio, wheelDiameterM);
    return {
      values: { speedMPerS, speedKmPerH: speedMPerS * 3.6, wheelRpm: motorRpm / gearRatio },
      steps: [step('Circumference', Math.PI * wheelDiameterM, 'm')],
    };
  },
});
