import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { copperFactor } from './copper.ts';
import { copperResistanceOhm } from './conductor-resistance.ts';
import { flexibleOhmPerKm } from './flexible-conductors.ts';

/**
 * Voltage lost out and back [V]: `dV = 2 L r I`.
 *
 * Source: Ohm's law (derived).
 *
 * @param ohmPerKm r at conductor temperature [Ω/km]
 * @param oneWayM L, one way [m]
 * @param currentA I [A]
 */
export function voltageDropV(ohmPerKm: number, oneWayM: number, currentA: number): number {
  return (2 * oneWayM * ohmPerKm * currentA) / 1000;
}

export const voltageDropFormula = defineFormula({
  id: 'voltage-drop',
  title: 'Voltage drop of a pair of wires',
  equation: 'dV = 2 L r I (1 + 0.00393 (theta - 20))',
  inputs: {
    areaMm2: number('mm²', 0.1, 500, 'copper area; standard areas use the class 5 table'),
    oneWayM: number('m', 0, 1000, 'length one way'),
    currentA: number('A', 0, 10_000, 'current'),
    temperatureC: number('°C', -60, 250, 'conductor temperature', 20),
    busVoltageV: number('V', 1, 500, 'voltage the drop is set against', 24),
  },
  outputs: {
    dropV: ['V', 'drop out and back'],
    dropPercent: ['%', 'drop against the voltage; above 3 % is much, above 5 % too much'],
    lossW: ['W', 'power lost in the wires'],
  },
  assumptions: 'Out and back alike; joints not counted.',
  validity: 'Class 5 table where it has the area, otherwise copper at 58 m/(Ω·mm²).',
  source: {
    class: 'derived',
    citation: 'Ohm’s law with IEC 60228 class 5; the 3 and 5 % marks are common practice',
  },
  compute: ({ areaMm2, oneWayM, currentA, temperatureC, busVoltageV }) => {
    const ohmPerKm =
      flexibleOhmPerKm(areaMm2, temperatureC) ?? copperResistanceOhm(areaMm2, 1000, temperatureC);
    const dropV = voltageDropV(ohmPerKm, oneWayM, currentA);
    return {
      values: { dropV, dropPercent: (100 * dropV) / busVoltageV, lossW: dropV * currentA },
      steps: [
        step('Resistance at 20 °C', ohmPerKm / copperFactor(temperatureC), 'Ω/km'),
        step('Resistance at temperature', ohmPerKm, 'Ω/km'),
        step('Resistance out and back', (2 * oneWayM * ohmPerKm) / 1000, 'Ω'),
      ],
    };
  },
});
