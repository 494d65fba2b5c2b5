import type { FormulaSource } from '../formula.ts';

/** Rest voltage against charge, as a source prints it; charge rising. */
export interface OpenCircuitTable {
  /** Cell groups the voltages are written for. */
  readonly cellGroups: number;
  readonly points: readonly (readonly [chargePercent: number, voltageV: number])[];
  /** Gap between the rest voltages after charging and after discharging, at half charge [V]. */
  readonly hysteresisV: number;
  readonly source: FormulaSource;
}

/** Rest voltages at 25 °C. */
export const openCircuitTables = {
  flooded: {
    cellGroups: 6,
    points: [
      [10, 11.72],
      [20, 11.88],
      [30, 12.02],
      [40, 12.12],
      [50, 12.2],
      [60, 12.28],
      [70, 12.36],
      [80, 12.46],
      [90, 12.58],
      [100, 12.7],
    ],
    hysteresisV: 0,
    source: { class: 'published', citation: 'handbook table for flooded 12 V blocks at rest' },
  },
  agm: {
    cellGroups: 6,
    points: [
      [25, 12],
      [50, 12.3],
      [75, 12.6],
      [100, 12.8],
    ],
    hysteresisV: 0,
    source: { class: 'from-memory', citation: 'makers’ tables for AGM blocks at rest' },
  },
  gel: {
    cellGroups: 6,
    points: [
      [25, 12],
      [50, 12.35],
      [75, 12.65],
      [100, 12.85],
    ],
    hysteresisV: 0,
    source: { class: 'from-memory', citation: 'makers’ tables for gel blocks at rest' },
  },
  lfp: {
    cellGroups: 1,
    points: [
      [0, 2.5],
      [10, 3],
      [20, 3.2],
      [30, 3.22],
      [40, 3.25],
      [50, 3.26],
      [60, 3.27],
      [70, 3.3],
      [80, 3.32],
      [90, 3.35],
      [100, 3.4],
    ],
    hysteresisV: 0.034,
    source: {
      class: 'from-memory',
      citation: 'makers’ tables for LFP cells; hysteresis at half charge measured',
    },
  },
} as const satisfies Readonly<Record<string, OpenCircuitTable>>;

export type TabledChemistry = keyof typeof openCircuitTables;
