import { defineFormula } from '../define-formula.ts';
import { number, word } from '../input-spec.ts';

/** Charge limits of a cell. */
export interface ChargeWindow {
  readonly endLowV: number;
  readonly endHighV: number;
  readonly floatLowV: number | null;
  readonly floatHighV: number | null;
  /** Current limits against capacity [1/h]. */
  readonly currentHighPerH: number | null;
  /** Current at which the charge ends, against capacity [1/h]. */
  readonly tailLowPerH: number | null;
  readonly tailHighPerH: number | null;
  /** Charge to be put back against charge drawn [1]. */
  readonly chargeFactor: number;
  readonly leastC: number | null;
}

/** Published in makers' handbooks, per cell. Lead: 14.4 to 14.7 V and 13.5 to 13.8 V per 12 V block. */
export const chargeWindows = {
  lead: {
    endLowV: 2.4,
    endHighV: 2.45,
    floatLowV: 2.25,
    floatHighV: 2.3,
    currentHighPerH: 0.3,
    tailLowPerH: null,
    tailHighPerH: null,
    chargeFactor: 1.1,
    leastC: null,
  },
  lfp: {
    endLowV: 3.65,
    endHighV: 3.65,
    floatLowV: null,
    floatHighV: null,
    currentHighPerH: null,
    tailLowPerH: 0.02,
    tailHighPerH: 0.05,
    chargeFactor: 1,
    leastC: 0,
  },
  nmc: {
    endLowV: 4.2,
    endHighV: 4.2,
    floatLowV: null,
    floatHighV: null,
    currentHighPerH: null,
    tailLowPerH: 0.02,
    tailHighPerH: 0.05,
    chargeFactor: 1,
    leastC: 0,
  },
} as const satisfies Readonly<Record<string, ChargeWindow>>;

export type ChargeFamily = keyof typeof chargeWindows;

const times = (value: number | null, factor: number) => (value === null ? null : value * factor);

export const chargeWindowFormula = defineFormula({
  id: 'charge-window',
  title: 'Charge voltages and currents of a pack',
  equation: 'table per cell times cells; currents times capacity',
  inputs: {
    family: word(['lead', 'lfp', 'nmc'], 'kind of cell'),
    cellGroups: number('1', 1, 100, 'cells or cell groups in series; 6 in a 12 V lead block'),
    capacityAh: number('A·h', 0.01, 10_000, 'capacity'),
  },
  outputs: {
    endLowV: ['V', 'least end voltage'],
    endHighV: ['V', 'largest end voltage'],
    floatLowV: ['V', 'least float voltage; none: must not be floated'],
    floatHighV: ['V', 'largest float voltage; none: must not be floated'],
    currentHighA: ['A', 'largest charge current; none: see the maker’s sheet'],
    tailLowA: ['A', 'least current at which the charge ends; none for lead'],
    tailHighA: ['A', 'largest current at which the charge ends; none for lead'],
    chargeFactor: ['1', 'charge to put back against charge drawn'],
    leastTemperatureC: ['°C', 'temperature below which it must not be charged; none for lead'],
  },
  assumptions: '25 °C.',
  validity: 'Usual cells; the maker’s sheet comes first.',
  source: {
    class: 'published',
    citation:
      'makers’ handbooks: lead 2.40 to 2.45 V cyclic, 2.25 to 2.30 V float, up to 0.30 C, factor 1.10; LFP 3.65 V, NMC 4.20 V, end at 0.02 to 0.05 C, no float, not below 0 °C',
  },
  compute: ({ family, cellGroups, capacityAh }) => {
    const window: ChargeWindow = chargeWindows[family];
    return {
      values: {
        endLowV: window.endLowV * cellGroups,
        endHighV: window.endHighV * cellGroups,
        floatLowV: times(window.floatLowV, cellGroups),
        floatHighV: times(window.floatHighV, cellGroups),
        currentHighA: times(window.currentHighPerH, capacityAh),
        tailLowA: times(window.tailLowPerH, capacityAh),
        tailHighA: times(window.tailHighPerH, capacityAh),
        chargeFactor: window.chargeFactor,
        leastTemperatureC: window.leastC,
      },
    };
  },
});
