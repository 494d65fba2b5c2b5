import { defineFormula } from '../define-formula.ts';
import { number, word } from '../input-spec.ts';

export const twoMotorsFormula = defineFormula({
  id: 'two-motors',
  title: 'Two equal motors in series or in parallel',
  equation: 'parallel: U = V, I_supply = 2 I; series: U = V/2, I_supply = I; T = 2 K (I - I0)',
  inputs: {
    arrangement: word(['series', 'parallel'], 'how the motors are connected'),
    supplyV: number('V', 0.1, 500, 'voltage of the supply'),
    resistanceOhm: number('Ω', 1e-4, 100, 'resistance of one motor'),
    constantVsPerRad: number('V·s/rad', 1e-5, 100, 'constant of one motor'),
    noLoadCurrentA: number('A', 0, 1000, 'current of one motor without load', 0),
    motorA: number('A', 0, 10_000, 'current of one motor'),
  },
  outputs: {
    motorV: ['V', 'voltage at one motor'],
    supplyA: ['A', 'current of the supply'],
    torqueNm: ['N·m', 'torque of both together'],
    stallA: ['A', 'current of the supply when they cannot turn'],
  },
  assumptions: 'Equal motors turning equally fast.',
  validity:
    'In a curve the wheels turn unequally; in series the faster motor then takes more voltage.',
  source: { class: 'derived', citation: 'Kirchhoff’s laws with the motor equations' },
  compute: ({ arrangement, supplyV, resistanceOhm, constantVsPerRad, noLoadCurrentA, motorA }) => {
    const series = arrangement === 'series';
    return {
      values: {
        motorV: series ? supplyV / 2 : supplyV,
        supplyA: series ? motorA : 2 * motorA,
        torqueNm: 2 * constantVsPerRad * Math.max(0, motorA - noLoadCurrentA),
        stallA: series ? supplyV / (2 * resistanceOhm) : (2 * supplyV) / resistanceOhm,
      },
    };
  },
});
