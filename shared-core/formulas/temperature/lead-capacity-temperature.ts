import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Capacity of a lead block at a temperature: `C = C20 (1 + lambda (theta - 20))`.
 *
 * Source: IEC 60896-21, clause on capacity, written for the capacity at the temperature (published); lambda 0.006 1/K
 * at 10 to 20 h rates, 0.01 1/K at 1 to 3 h rates.
 *
 * @param capacityAh C20, capacity at 20 °C [A·h]
 * @param temperatureC theta [°C], -20 to 50
 * @param coefficientPerK lambda [1/K]
 */
export function leadCapacityAtTemperatureAh(
  capacityAh: number,
  temperatureC: number,
  coefficientPerK: number,
): number {
  return capacityAh * (1 + coefficientPerK * (temperatureC - 20));
}

export const leadCapacityTemperatureFormula = defineFormula({
  id: 'lead-capacity-temperature',
  title: 'Capacity of a lead block at a temperature',
  equation: 'C = C20 (1 + lambda (theta - 20))',
  inputs: {
    capacityAh: number('A·h', 0.01, 10_000, 'capacity at 20 °C'),
    temperatureC: number('°C', -20, 50, 'temperature of the block'),
    coefficientPerK: number('1/K', 0, 0.02, '0.006 at 10 to 20 h rates, 0.01 at 1 to 3 h', 0.006),
  },
  outputs: {
    capacityAtTemperatureAh: ['A·h', 'capacity at that temperature'],
    share: ['1', 'share of the capacity at 20 °C'],
  },
  assumptions: 'The block itself has that temperature, not only the air.',
  validity: 'Healthy blocks; the standard’s own tests lie between 15 and 25 °C.',
  source: { class: 'published', citation: 'IEC 60896-21, clause on capacity tests' },
  compute: ({ capacityAh, temperatureC, coefficientPerK }) => {
    const atTemperature = leadCapacityAtTemperatureAh(capacityAh, temperatureC, coefficientPerK);
    return {
      values: {
        capacityAtTemperatureAh: atTemperature,
        share: atTemperature / capacityAh,
      },
    };
  },
});
