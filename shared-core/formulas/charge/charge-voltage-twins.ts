import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import type { ChargeFamily } from './charge-windows.ts';
import { chargeWindows } from './charge-windows.ts';

/**
 * Number of cells for which a voltage is a fitting end voltage, 0 where none is.
 *
 * Source: makers' charge windows per cell (published), divided (derived).
 *
 * @param endV end voltage of a charger [V]
 * @param tolerance how far off it may be, as a share [1]
 */
export function cellsForEndVoltage(family: ChargeFamily, endV: number, tolerance: number): number {
  const { endLowV, endHighV } = chargeWindows[family];
  const cells = Math.round(endV / ((endLowV + endHighV) / 2));
  const fits =
    endV >= cells * endLowV * (1 - tolerance) && endV <= cells * endHighV * (1 + tolerance);
  return cells > 0 && fits ? cells : 0;
}

export const chargeVoltageTwinsFormula = defineFormula({
  id: 'charge-voltage-twins',
  title: 'Packs that share an end voltage',
  equation: 'n with n V_low (1 - tol) <= V_end <= n V_high (1 + tol)',
  inputs: {
    endV: number('V', 1, 500, 'end voltage of a charger'),
    tolerancePercent: number('%', 0, 5, 'how far off it may be', 0.5),
  },
  outputs: {
    leadCells: ['1', 'lead cells it would fit; 0: none'],
    lfpCells: ['1', 'LFP cells it would fit; 0: none'],
    nmcCells: ['1', 'NMC cells it would fit; 0: none'],
  },
  assumptions: 'End voltage alone; stages and float are not looked at.',
  validity:
    'A warning only: equal volts is not a match, the charger’s chemistry and stages must fit too.',
  source: { class: 'derived', citation: 'makers’ charge windows per cell, divided' },
  compute: ({ endV, tolerancePercent }) => {
    const cells = (family: ChargeFamily) =>
      cellsForEndVoltage(family, endV, tolerancePercent / 100);
    return { values: { leadCells: cells('lead'), lfpCells: cells('lfp'), nmcCells: cells('nmc') } };
  },
});
