import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Rise of one heat node under constant loss from cold: `dT = P R_th (1 - e^(-t/tau))`.
 *
 * Source: solution of the one-node heat balance (derived).
 *
 * @param lossW P [W]
 * @param resistanceKPerW R_th to the air [K/W]
 * @param timeConstantS tau [s], above 0
 * @param timeS t [s]
 * @returns rise above the air [K]
 */
export function thermalRiseK(
  lossW: number,
  resistanceKPerW: number,
  timeConstantS: number,
  timeS: number,
): number {
  return lossW * resistanceKPerW * -Math.expm1(-timeS / timeConstantS);
}

export const thermalRiseFormula = defineFormula({
  id: 'thermal-rise',
  title: 'Temperature rise of a motor or part',
  equation: 'dT = P R_th (1 - e^(-t/tau))',
  inputs: {
    lossW: number('W', 0, 100_000, 'power turned to heat'),
    resistanceKPerW: number('K/W', 1e-4, 1000, 'heat resistance to the air'),
    timeConstantS: number('s', 0.1, 1e6, 'time constant of the heating'),
    timeS: number('s', 0, 1e8, 'time since the cold start'),
    ambientC: number('°C', -40, 60, 'air temperature', 25),
  },
  outputs: {
    riseK: ['K', 'rise above the air'],
    temperatureC: ['°C', 'temperature'],
    finalRiseK: ['K', 'rise after a long time'],
  },
  assumptions: 'One node, constant loss, cold at the start.',
  validity: 'Mean temperature; a winding runs hotter than its case in the first minutes.',
  source: { class: 'derived', citation: 'one-node heat balance' },
  compute: ({ lossW, resistanceKPerW, timeConstantS, timeS, ambientC }) => {
    const riseK = thermalRiseK(lossW, resistanceKPerW, timeConstantS, timeS);
    return {
      values: { riseK, temperatureC: ambientC + riseK, finalRiseK: lossW * resistanceKPerW },
      steps: [step('Heat capacity tau/R_th', timeConstantS / resistanceKPerW, 'J/K')],
    };
  },
});
