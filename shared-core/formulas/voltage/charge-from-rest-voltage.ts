import { findRoot } from '../../numerics/find-root.ts';
import { defineFormula, step } from '../define-formula.ts';
import { number, word } from '../input-spec.ts';
import { fail } from '../read-input.ts';
import {
  leastTabledChargePercent,
  restChemistries,
  restVoltagePerCellV,
} from './open-circuit-voltage.ts';

/** Between these charges the rest voltage of LFP is too flat, and its hysteresis too wide, to tell the charge. */
const lfpBlind = { fromPercent: 20, toPercent: 90 } as const;

export const chargeFromRestVoltageFormula = defineFormula({
  id: 'charge-from-rest-voltage',
  title: 'Charge from rest voltage',
  equation: 's where OCV(s) = V/n',
  inputs: {
    chemistry: word(restChemistries, 'chemistry of the cells'),
    restVoltageV: number('V', 0.1, 500, 'voltage after hours of rest, without load'),
    cellGroups: number('1', 1, 100, 'cells or cell groups in series; 6 in a 12 V lead block', 1),
  },
  outputs: { chargePercent: ['%', 'charge'] },
  assumptions: '25 °C, rested for hours, no load, no surface charge.',
  validity: 'Within the table of the chemistry; never for LFP between 20 and 90 % charge.',
  source: { class: 'derived', citation: 'inverse of the rest-voltage tables' },
  compute: ({ chemistry, restVoltageV, cellGroups }) => {
    const cellV = restVoltageV / cellGroups;
    const at = (percent: number) => restVoltagePerCellV(chemistry, percent);
    const least = leastTabledChargePercent(chemistry);
    const lowV = at(least);
    const highV = at(100);
    if (cellV < lowV - 1e-9 || cellV > highV + 1e-9) {
      const from = (lowV * cellGroups).toFixed(2);
      const to = (highV * cellGroups).toFixed(2);
      return fail(
        'restVoltageV',
        `is ${restVoltageV}, outside the rest voltages of ${cellGroups} ${chemistry} groups`,
        `Give a rest voltage from ${from} to ${to} V, or correct the number of groups.`,
      );
    }
    if (
      chemistry === 'lfp' &&
      cellV > at(lfpBlind.fromPercent) + 1e-9 &&
      cellV < at(lfpBlind.toPercent) - 1e-9
    ) {
      return fail(
        'restVoltageV',
        'says nothing reliable about LFP between 20 and 90 % charge',
        'Count the charge drawn since the last full charge instead.',
      );
    }
    const root = findRoot((percent) => at(percent) - cellV, least, 100);
    const chargePercent = root.ok ? root.x : cellV >= highV ? 100 : least;
    return { values: { chargePercent }, steps: [step('Voltage of a cell', cellV, 'V')] };
  },
});
