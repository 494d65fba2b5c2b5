import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Share of sites filled with lithium at 0 and 100 % charge: where the published functions give 2.5 V and 4.2 V with the
 * lithium inventory of the same paper (recomputed).
 */
const graphiteSites = { empty: 0.0263458, full: 0.910618 } as const;
const oxideSites = { empty: 0.8539747, full: 0.2638452 } as const;

/**
 * Potential of the graphite and silicon electrode against lithium [V].
 *
 * Source: Chen et al., J. Electrochem. Soc. 167 (2020) 080534, fitted function for the negative electrode (published).
 *
 * @param x share of sites filled [1], 0.02 to 0.92
 */
export function graphitePotentialV(x: number): number {
  return (
    0.2482 +
    1.9793 * Math.exp(-39.3631 * x) -
    0.0909 * Math.tanh(29.8538 * (x - 0.1234)) -
    0.04478 * Math.tanh(14.9159 * (x - 0.2769)) -
    0.0205 * Math.tanh(30.4444 * (x - 0.6103))
  );
}

/**
 * Potential of the NMC811 electrode against lithium [V].
 *
 * Source: Chen et al. 2020, fitted function for the positive electrode (published).
 *
 * @param y share of sites filled [1], 0.25 to 0.91
 */
export function oxidePotentialV(y: number): number {
  return (
    4.4875 -
    0.809 * y -
    0.0428 * Math.tanh(18.5138 * (y - 0.5542)) -
    17.7326 * Math.tanh(15.789 * (y - 0.3117)) +
    17.5842 * Math.tanh(15.9308 * (y - 0.312))
  );
}

const at = (sites: { readonly empty: number; readonly full: number }, share: number) =>
  sites.empty + (sites.full - sites.empty) * share;

/**
 * Rest voltage of an NMC811/graphite cell [V].
 *
 * @param chargePercent charge between 2.5 V and 4.2 V at rest [%], 0 to 100
 */
export function nmcRestVoltageV(chargePercent: number): number {
  const share = chargePercent / 100;
  return oxidePotentialV(at(oxideSites, share)) - graphitePotentialV(at(graphiteSites, share));
}

export const nmcHalfCellsFormula = defineFormula({
  id: 'nmc-half-cells',
  title: 'Rest voltage of an NMC811/graphite cell from its electrodes',
  equation:
    'OCV = U+(y) - U-(x); x = 0.02635 + 0.88427 s, y = 0.85397 - 0.59013 s; U+ and U- are sums of tanh and exp',
  inputs: {
    chargePercent: number('%', 0, 100, 'charge'),
    cellGroups: number('1', 1, 100, 'cell groups in series', 1),
  },
  outputs: {
    cellV: ['V', 'rest voltage of a cell'],
    blockV: ['V', 'rest voltage of all groups'],
  },
  assumptions: '25 °C, settled; 0 % at 2.5 V and 100 % at 4.2 V.',
  validity: 'Cells of this chemistry; other NMC grades differ by some 0.05 V.',
  source: {
    class: 'recomputed',
    citation:
      'Chen et al., J. Electrochem. Soc. 167 (2020) 080534: fitted electrode functions, end points solved for 2.5 V and 4.2 V',
  },
  compute: ({ chargePercent, cellGroups }) => {
    const share = chargePercent / 100;
    const cellV = nmcRestVoltageV(chargePercent);
    return {
      values: { cellV, blockV: cellV * cellGroups },
      steps: [
        step('Positive electrode', oxidePotentialV(at(oxideSites, share)), 'V'),
        step('Negative electrode', graphitePotentialV(at(graphiteSites, share)), 'V'),
      ],
    };
  },
});
