import { interpolateLogLog } from '../../numerics/interpolate-table.ts';
import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/** Cycles of an AGM block until a fifth of the capacity is gone, by depth [%]. From memory of makers' curves. */
export const agmCyclesByDepth = [
  [30, 1200],
  [50, 500],
  [100, 200],
] as const;

/**
 * Cycles an AGM block lasts at a depth of discharge, between the known points by a power law.
 *
 * From memory of makers' curves.
 *
 * @param depthPercent depth [%], 30 to 100; the end values hold outside
 */
export function agmCycleLife(depthPercent: number): number {
  return interpolateLogLog(agmCyclesByDepth, depthPercent);
}

export const cycleLifeFormula = defineFormula({
  id: 'cycle-life',
  title: 'Cycles an AGM block lasts at a depth',
  equation: 'table, power law between its points',
  inputs: {
    depthPercent: number('%', 30, 100, 'depth of each discharge'),
    outingsPerYear: number('1', 1, 2000, 'discharges of that depth in a year', 100),
  },
  outputs: {
    cycles: ['1', 'cycles until a fifth of the capacity is gone'],
    years: ['years', 'time until then at so many discharges a year'],
  },
  assumptions: 'Recharged fully each time, near 25 °C.',
  validity: 'AGM blocks for cycling; standby types last less.',
  source: {
    class: 'from-memory',
    citation: 'makers’ curves: 1200, 500 and 200 cycles at 30, 50 and 100 %',
  },
  compute: ({ depthPercent, outingsPerYear }) => {
    const cycles = agmCycleLife(depthPercent);
    return { values: { cycles, years: cycles / outingsPerYear } };
  },
});
