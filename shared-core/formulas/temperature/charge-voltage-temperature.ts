import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Charge voltage of a lead block at a temperature: `V = V0 + n a (theta - theta0)`.
 *
 * Source: makers' handbooks, a = -3 mV/K per cell on float (published); -4 to -5 mV/K in cyclic charging (from memory).
 *
 * @param voltageV V0, voltage at the reference temperature [V]
 * @param cells n
 * @param temperatureC theta [°C]
 * @param coefficientMvPerK a, per cell [mV/K]
 * @param referenceC theta0 [°C]
 */
export function chargeVoltageAtTemperatureV(
  voltageV: number,
  cells: number,
  temperatureC: number,
  coefficientMvPerK: number,
  referenceC: number,
): number {
  return voltageV + cells * (coefficientMvPerK / 1000) * (temperatureC - referenceC);
}

export const chargeVoltageTemperatureFormula = defineFormula({
  id: 'charge-voltage-temperature',
  title: 'Charge voltage of a lead block at a temperature',
  equation: 'V = V0 + n a (theta - theta0)',
  inputs: {
    voltageV: number('V', 1, 500, 'charge voltage at the reference temperature'),
    cells: number('1', 1, 100, 'lead cells in series; 6 in a 12 V block'),
    temperatureC: number('°C', -20, 60, 'temperature of the block'),
    coefficientMvPerK: number('mV/K', -8, 0, 'per cell: -3 on float, -4 to -5 in cycles', -3),
    referenceC: number('°C', 0, 40, 'temperature for which the voltage is stated', 25),
  },
  outputs: { compensatedV: ['V', 'charge voltage at that temperature'] },
  assumptions: 'Same temperature in all cells.',
  validity: 'Lead blocks; never for lithium.',
  source: {
    class: 'published',
    citation: 'makers’ handbooks: -3 mV/K per cell on float; -4 to -5 in cycles from memory',
  },
  compute: ({ voltageV, cells, temperatureC, coefficientMvPerK, referenceC }) => {
    const compensatedV = chargeVoltageAtTemperatureV(
      voltageV,
      cells,
      temperatureC,
      coefficientMvPerK,
      referenceC,
    );
    return {
      values: { compensatedV },
      steps: [step('Change of the voltage', compensatedV - voltageV, 'V')],
    };
  },
});
