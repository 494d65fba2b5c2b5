import { interpolateTable } from '../../numerics/interpolate-table.ts';
import { defineFormula } from '../define-formula.ts';
import { number, word } from '../input-spec.ts';
import { fail } from '../read-input.ts';
import { nmcRestVoltageV } from './nmc-half-cells.ts';
import type { TabledChemistry } from './open-circuit-tables.ts';
import { openCircuitTables } from './open-circuit-tables.ts';

export const restChemistries = ['flooded', 'agm', 'gel', 'lfp', 'nmc'] as const;
export type RestChemistry = (typeof restChemistries)[number];

/** Least charge for which a source gives a rest voltage [%]. */
export function leastTabledChargePercent(chemistry: RestChemistry): number {
  return chemistry === 'nmc' ? 0 : openCircuitTables[chemistry].points[0][0];
}

/**
 * Rest voltage of one cell at 25 °C [V], linear between the printed points; NMC from its electrode functions.
 *
 * Source: stands with each table (published for flooded and NMC, from memory for AGM, gel and LFP).
 *
 * @param chargePercent charge [%], from `leastTabledChargePercent` to 100; the end values hold outside
 */
export function restVoltagePerCellV(chemistry: RestChemistry, chargePercent: number): number {
  if (chemistry === 'nmc') return nmcRestVoltageV(Math.min(100, Math.max(0, chargePercent)));
  const table = openCircuitTables[chemistry satisfies TabledChemistry];
  return interpolateTable(table.points, chargePercent) / table.cellGroups;
}

export const openCircuitVoltageFormula = defineFormula({
  id: 'open-circuit-voltage',
  title: 'Rest voltage from charge',
  equation: 'table, linear between its points; NMC: U+(y) - U-(x)',
  inputs: {
    chemistry: word(restChemistries, 'chemistry of the cells'),
    chargePercent: number('%', 0, 100, 'charge'),
    cellGroups: number('1', 1, 100, 'cells or cell groups in series; 6 in a 12 V lead block', 1),
  },
  outputs: {
    cellV: ['V', 'rest voltage of a cell'],
    blockV: ['V', 'rest voltage of all groups'],
    hysteresisV: ['V', 'gap between rest after charging and after discharging, at half charge'],
  },
  assumptions: '25 °C, rested for hours, no load.',
  validity: 'Flooded from 10 %, AGM and gel from 25 %, LFP and NMC from 0 % charge.',
  source: {
    class: 'published',
    citation:
      'flooded: handbook table; NMC: Chen et al., J. Electrochem. Soc. 167 (2020) 080534; AGM, gel and LFP from memory',
  },
  compute: ({ chemistry, chargePercent, cellGroups }) => {
    const least = leastTabledChargePercent(chemistry);
    if (chargePercent < least) {
      return fail(
        'chargePercent',
        `is ${chargePercent}, below the least charge with a known rest voltage`,
        `Give chargePercent from ${least} to 100 for ${chemistry}.`,
      );
    }
    const cellV = restVoltagePerCellV(chemistry, chargePercent);
    const hysteresisV = chemistry === 'nmc' ? 0 : openCircuitTables[chemistry].hysteresisV;
    return { values: { cellV, blockV: cellV * cellGroups, hysteresisV } };
  },
});
