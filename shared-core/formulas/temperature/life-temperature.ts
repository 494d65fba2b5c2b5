import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Calendar life at another temperature: `life 2^(-(theta - reference)/10)`.
 *
 * Source: rule of halved life per 10 K in makers' handbooks for stationary lead blocks (published).
 *
 * @param lifeYears life at the reference temperature [years]
 * @param referenceC reference temperature [°C]
 * @param temperatureC mean temperature [°C], 0 to 60
 */
export function lifeAtTemperatureYears(
  lifeYears: number,
  referenceC: number,
  temperatureC: number,
): number {
  return lifeYears * 2 ** (-(temperatureC - referenceC) / 10);
}

export const lifeTemperatureFormula = defineFormula({
  id: 'life-temperature',
  title: 'Calendar life at a temperature',
  equation: 'life = life0 2^(-(theta - theta0)/10)',
  inputs: {
    lifeYears: number('years', 0.1, 50, 'life at the reference temperature'),
    temperatureC: number('°C', 0, 60, 'mean temperature of the block'),
    referenceC: number('°C', 0, 40, 'reference temperature', 20),
  },
  outputs: { lifeAtTemperatureYears: ['years', 'life at that temperature'] },
  assumptions: 'Kept charged; ageing by cycles counts extra.',
  validity: 'Lead blocks on float; a guide for others.',
  source: { class: 'published', citation: 'makers’ handbooks: life halves with each 10 K' },
  compute: ({ lifeYears, temperatureC, referenceC }) => ({
    values: { lifeAtTemperatureYears: lifeAtTemperatureYears(lifeYears, referenceC, temperatureC) },
  }),
});
