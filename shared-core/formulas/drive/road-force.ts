import { gravityMPerS2, slopeOfGrade } from './gravity.ts';
import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/** What the road and the air ask of the machine. Parts add up to the force at the wheels [N]. */
export interface RoadForce {
  readonly rollingN: number;
  readonly slopeN: number;
  readonly dragN: number;
}

/**
 * Force at the wheels at steady speed: `F = m g (Crr cos a + sin a) + rho CdA v²/2`.
 *
 * Source: textbook vehicle dynamics (published).
 *
 * @param massKg m with rider [kg]
 * @param rollingCoefficient Crr [1]
 * @param gradePercent rise over horizontal distance [%]
 * @param speedMPerS v [m/s]
 * @param dragAreaM2 CdA [m²]
 * @param airDensityKgPerM3 rho [kg/m³]
 */
export function roadForce(
  massKg: number,
  rollingCoefficient: number,
  gradePercent: number,
  speedMPerS: number,
  dragAreaM2 = 0,
  airDensityKgPerM3 = 1.2,
): RoadForce {
  const { sine, cosine } = slopeOfGrade(gradePercent);
  const weightN = massKg * gravityMPerS2;
  return {
    rollingN: weightN * rollingCoefficient * cosine,
    slopeN: weightN * sine,
    dragN: (airDensityKgPerM3 * dragAreaM2 * speedMPerS * Math.abs(speedMPerS)) / 2,
  };
}

export const roadForceFormula = defineFormula({
  id: 'road-force',
  title: 'Force and power at the wheels',
  equation: 'F = m g (Crr cos a + sin a) + rho CdA v²/2; P = F v',
  inputs: {
    massKg: number('kg', 0.1, 5000, 'mass with rider and load'),
    rollingCoefficient: number('1', 0, 1, 'rolling coefficient of the surface'),
    gradePercent: number('%', -100, 100, 'rise over horizontal distance', 0),
    speedMPerS: number('m/s', 0, 30, 'speed'),
    dragAreaM2: number('m²', 0, 5, 'drag coefficient times frontal area', 0),
    airDensityKgPerM3: number('kg/m³', 0.5, 1.6, 'air density', 1.2),
  },
  outputs: {
    forceN: ['N', 'force at the wheels; negative where the slope drives'],
    powerW: ['W', 'power at the wheels'],
  },
  assumptions: 'Steady speed, no wind.',
  validity: 'Small vehicles on even ground.',
  source: { class: 'published', citation: 'textbook vehicle dynamics; g = 9.80665 m/s²' },
  compute: (inputs) => {
    const { rollingN, slopeN, dragN } = roadForce(
      inputs.massKg,
      inputs.rollingCoefficient,
      inputs.gradePercent,
      inputs.speedMPerS,
      inputs.dragAreaM2,
      inputs.airDensityKgPerM3,
    );
    const forceN = rollingN + slopeN + dragN;
    return {
      values: { forceN, powerW: forceN * inputs.speedMPerS },
      steps: [step('Rolling', rollingN, 'N'), step('Slope', slopeN, 'N'), step('Air', dragN, 'N')],
    };
  },
});
