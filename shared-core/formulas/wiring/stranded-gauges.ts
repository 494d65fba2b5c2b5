import { defineFormula } from '../define-formula.ts';
import { gauge, number } from '../input-spec.ts';
import { fail } from '../read-input.ts';
import { copperFactor } from './copper.ts';

const kilofootKm = 0.3048;

/** Direct-current resistance of stranded uncoated copper at 75 °C [AWG, Ω/kft]. */
export const strandedGauges = [
  { gauge: 18, ohmPerKft: 7.95, class: 'published' },
  { gauge: 16, ohmPerKft: 4.99, class: 'published' },
  { gauge: 14, ohmPerKft: 3.14, class: 'published' },
  { gauge: 12, ohmPerKft: 1.98, class: 'published' },
  { gauge: 10, ohmPerKft: 1.24, class: 'from-memory' },
  { gauge: 8, ohmPerKft: 0.778, class: 'published' },
  { gauge: 6, ohmPerKft: 0.491, class: 'published' },
  { gauge: 4, ohmPerKft: 0.308, class: 'published' },
  { gauge: 2, ohmPerKft: 0.194, class: 'published' },
] as const;

/**
 * Resistance of a stranded gauge at a temperature [Ω/km].
 *
 * Source: National Electrical Code, chapter 9, table 8, at 75 °C (published; 10 AWG from memory), carried to another
 * temperature with IEC 60028.
 *
 * @returns null where the table has no such gauge
 */
export function strandedOhmPerKm(gaugeNumber: number, temperatureC: number): number | null {
  const row = strandedGauges.find((each) => each.gauge === gaugeNumber);
  if (row === undefined) return null;
  return ((row.ohmPerKft / kilofootKm) * copperFactor(temperatureC)) / copperFactor(75);
}

export const strandedGaugeFormula = defineFormula({
  id: 'stranded-gauge-resistance',
  title: 'Resistance of a stranded wire gauge',
  equation: 'R = r75 (1 + 0.00393 (theta - 20))/(1 + 0.00393 · 55) L',
  inputs: {
    gauge: gauge(2, 18, 'wire gauge: 18, 16, 14, 12, 10, 8, 6, 4 or 2'),
    lengthM: number('m', 0, 10_000, 'length of one conductor', 1000),
    temperatureC: number('°C', -60, 250, 'conductor temperature', 75),
  },
  outputs: {
    ohmPerKm: ['Ω/km', 'resistance per length'],
    ohmPerKft: ['Ω/kft', 'the same per 1000 ft'],
    resistanceOhm: ['Ω', 'resistance of one conductor'],
  },
  assumptions: 'Uncoated copper strands.',
  validity: 'Gauges of the table.',
  source: {
    class: 'published',
    citation: 'National Electrical Code, chapter 9, table 8; 10 AWG from memory',
  },
  compute: ({ gauge: n, lengthM, temperatureC }) => {
    const ohmPerKm = strandedOhmPerKm(n, temperatureC);
    if (ohmPerKm === null) {
      const known = strandedGauges.map((row) => row.gauge).join(', ');
      return fail('gauge', `${n} AWG is not in the table`, `Give gauge as one of: ${known}.`);
    }
    return {
      values: {
        ohmPerKm,
        ohmPerKft: ohmPerKm * kilofootKm,
        resistanceOhm: (ohmPerKm * lengthM) / 1000,
      },
    };
  },
});
