import { interpolateTable } from '../../numerics/interpolate-table.ts';
import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/** Share of the capacity at 25 °C that an NMC cell of 1.5 A·h gave at 10 A [°C, %]. */
export const nmcSharePercent = [
  [-20, 60],
  [-10, 75],
  [0, 80],
  [25, 100],
] as const;

/**
 * Share of its capacity that a small NMC cell gives at a high rate in the cold [1], linear between measured points.
 *
 * Source: published measurement on one cell of 1.5 A·h at 10 A.
 *
 * @param temperatureC [°C], -20 to 25; the end values hold outside
 */
export function nmcCapacityShare(temperatureC: number): number {
  return interpolateTable(nmcSharePercent, temperatureC) / 100;
}

export const nmcCapacityTemperatureFormula = defineFormula({
  id: 'nmc-capacity-temperature',
  title: 'Capacity of an NMC cell in the cold',
  equation: 'table, linear between its points',
  inputs: {
    capacityAh: number('A·h', 0.01, 10_000, 'capacity at 25 °C'),
    temperatureC: number('°C', -20, 25, 'temperature of the cell'),
  },
  outputs: {
    capacityAtTemperatureAh: ['A·h', 'capacity at that temperature'],
    share: ['1', 'share of the capacity at 25 °C'],
  },
  assumptions: 'High rate, about 7 times the capacity per hour.',
  validity: 'An upper limit for the loss at gentler rates.',
  source: { class: 'published', citation: 'measurement on one NMC cell of 1.5 A·h at 10 A' },
  compute: ({ capacityAh, temperatureC }) => {
    const share = nmcCapacityShare(temperatureC);
    return { values: { capacityAtTemperatureAh: capacityAh * share, share } };
  },
});
