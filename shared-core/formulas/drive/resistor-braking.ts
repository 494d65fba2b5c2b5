import { gravityMPerS2, slopeOfGrade } from './gravity.ts';
import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/** Braking by a motor that feeds a resistor. */
export interface ResistorBraking {
  readonly peakA: number;
  /** Share of the energy that the resistor takes; the armature takes the rest [1]. */
  readonly resistorShare: number;
  /** Power in the resistor at the first instant [W]. */
  readonly peakResistorW: number;
  /** Energy of motion [J]. */
  readonly motionJ: number;
  readonly timeConstantS: number;
  readonly stopDistanceM: number;
  /** First deceleration [m/s²]. */
  readonly peakDecelerationMPerS2: number;
}

/**
 * Braking through a resistor from a speed, on the level without other drag: `I = E/(Ra + Rb)`, share `Rb/(Ra + Rb)`,
 * `tau = m (Ra + Rb)/k²` with `k = E/v`; speed and current die off as e^(-t/tau), so the way is `v tau`.
 *
 * Source: motor equations with the equation of motion (derived).
 *
 * @param generatedV E, voltage the motor generates at that speed [V], above 0
 * @param armatureOhm Ra [Ω], above 0
 * @param brakeOhm Rb [Ω], not negative
 * @param massKg m [kg]
 * @param speedMPerS v [m/s], above 0
 */
export function resistorBraking(
  generatedV: number,
  armatureOhm: number,
  brakeOhm: number,
  massKg: number,
  speedMPerS: number,
): ResistorBraking {
  const loopOhm = armatureOhm + brakeOhm;
  const k = generatedV / speedMPerS;
  const peakA = generatedV / loopOhm;
  const timeConstantS = (massKg * loopOhm) / k ** 2;
  return {
    peakA,
    resistorShare: brakeOhm / loopOhm,
    peakResistorW: peakA ** 2 * brakeOhm,
    motionJ: (massKg * speedMPerS ** 2) / 2,
    timeConstantS,
    stopDistanceM: speedMPerS * timeConstantS,
    peakDecelerationMPerS2: speedMPerS / timeConstantS,
  };
}

/**
 * Speed at which a resistor-braked machine keeps rolling down a slope: `v = m g sin a (Ra + Rb)/k²`. It never holds.
 *
 * Source: balance of slope and braking force (derived).
 *
 * @param voltPerMPerS k, generated voltage for each m/s [V·s/m], above 0
 * @param loopOhm Ra + Rb [Ω]
 */
export function resistorCreepMPerS(
  massKg: number,
  gradePercent: number,
  voltPerMPerS: number,
  loopOhm: number,
): number {
  const { sine } = slopeOfGrade(gradePercent);
  return (massKg * gravityMPerS2 * sine * loopOhm) / voltPerMPerS ** 2;
}

const brakeInputs = {
  generatedV: number('V', 0.01, 500, 'voltage the motor generates at that speed'),
  speedMPerS: number('m/s', 0.01, 30, 'speed'),
  armatureOhm: number('Ω', 1e-4, 100, 'resistance of the motor'),
  brakeOhm: number('Ω', 0, 1000, 'brake resistor; 0 for a dead short'),
  massKg: number('kg', 0.1, 5000, 'mass with rider and load'),
} as const;

const source = {
  class: 'derived',
  citation: 'motor equations with the equation of motion',
} as const;

export const resistorBrakingFormula = defineFormula({
  id: 'resistor-braking',
  title: 'Braking through a resistor',
  equation: 'I = E/(Ra + Rb); share Rb/(Ra + Rb); tau = m (Ra + Rb)/k², k = E/v; way v tau',
  inputs: brakeInputs,
  outputs: {
    peakA: ['A', 'first current'],
    peakResistorW: ['W', 'first power in the resistor'],
    resistorShare: ['1', 'share of the energy that goes into the resistor'],
    motionJ: ['J', 'energy of motion'],
    resistorJ: ['J', 'part of it that goes into the resistor'],
    timeConstantS: ['s', 'time after which 37 % of the speed is left'],
    stopDistanceM: ['m', 'way until standstill'],
    peakDecelerationMPerS2: ['m/s²', 'first deceleration'],
  },
  assumptions: 'Level ground, no other drag, stiff wheels on the ground, constant resistance.',
  validity: 'Magnet motors without controller between; the brake fades with speed and never holds.',
  source,
  compute: ({ generatedV, speedMPerS, armatureOhm, brakeOhm, massKg }) => {
    const braking = resistorBraking(generatedV, armatureOhm, brakeOhm, massKg, speedMPerS);
    return {
      values: { ...braking, resistorJ: braking.motionJ * braking.resistorShare },
      steps: [step('k = E/v', generatedV / speedMPerS, 'V·s/m')],
    };
  },
});

export const resistorCreepFormula = defineFormula({
  id: 'resistor-creep',
  title: 'Speed down a slope against a brake resistor',
  equation: 'v = m g sin a (Ra + Rb)/k², k = E/v0',
  inputs: { ...brakeInputs, gradePercent: number('%', 0, 100, 'fall over horizontal distance') },
  outputs: { creepMPerS: ['m/s', 'speed at which it keeps rolling'] },
  assumptions: 'No other drag; rolling drag lowers the speed.',
  validity: 'A resistor never holds a machine on a slope: a mechanical brake is needed.',
  source,
  compute: ({ generatedV, speedMPerS, armatureOhm, brakeOhm, massKg, gradePercent }) => {
    const k = generatedV / speedMPerS;
    return {
      values: { creepMPerS: resistorCreepMPerS(massKg, gradePercent, k, armatureOhm + brakeOhm) },
      steps: [step('k = E/v0', k, 'V·s/m')],
    };
  },
});
