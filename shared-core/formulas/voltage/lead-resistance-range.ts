import { interpolateLogLog } from '../../numerics/interpolate-table.ts';
import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/** Resistance of new 12 V lead blocks: capacity, least and largest [A·h, mΩ]. Common practice, no source. */
const ranges = [
  { capacityAh: 7, lowMilliohm: 22, highMilliohm: 30 },
  { capacityAh: 12, lowMilliohm: 14, highMilliohm: 20 },
  { capacityAh: 20, lowMilliohm: 10, highMilliohm: 14 },
] as const;

/**
 * Usual resistance of a new, full 12 V lead block [mΩ], between the capacities known by a power law.
 *
 * Common practice, no source.
 *
 * @param capacityAh rated capacity [A·h], 7 to 20
 */
export function leadResistanceRangeMilliohm(capacityAh: number): { low: number; high: number } {
  const read = (key: 'lowMilliohm' | 'highMilliohm') =>
    interpolateLogLog(
      ranges.map((range) => [range.capacityAh, range[key]]),
      capacityAh,
    );
  return { low: read('lowMilliohm'), high: read('highMilliohm') };
}

export const leadResistanceRangeFormula = defineFormula({
  id: 'lead-resistance-range',
  title: 'Usual resistance of a 12 V lead block',
  equation: 'table, power law between its points; worn: 2 to 5 times',
  inputs: { capacityAh: number('A·h', 7, 20, 'rated capacity') },
  outputs: {
    lowMilliohm: ['mΩ', 'least when new'],
    highMilliohm: ['mΩ', 'largest when new'],
    wornLowMilliohm: ['mΩ', 'twice the least'],
    wornHighMilliohm: ['mΩ', 'five times the largest'],
  },
  assumptions: 'Full, 25 °C.',
  validity: '12 V blocks of 7 to 20 A·h.',
  source: { class: 'common-practice', citation: 'common practice, no source' },
  compute: ({ capacityAh }) => {
    const { low, high } = leadResistanceRangeMilliohm(capacityAh);
    return {
      values: {
        lowMilliohm: low,
        highMilliohm: high,
        wornLowMilliohm: 2 * low,
        wornHighMilliohm: 5 * high,
      },
    };
  },
});
