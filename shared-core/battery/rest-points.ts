import { nmcRestVoltageV } from '../formulas/voltage/nmc-half-cells.ts';
import { openCircuitTables } from '../formulas/voltage/open-circuit-tables.ts';
import type { Chemistry } from '../plan/schema/block.ts';

type Points = readonly (readonly [charge: number, voltageV: number])[];

/** Lead below the printed tables: the curve bends to the usual end of a block, 10.5 V. Common practice, no source. */
const leadTail: Points = [
  [0, 10.5 / 6],
  [0.02, 11 / 6],
  [0.05, 11.38 / 6],
  [0.1, 11.72 / 6],
];

/** What the printed tables leave out, each charge below or between theirs. Common practice, no source. */
const filledIn: Readonly<Record<keyof typeof openCircuitTables, Points>> = {
  agm: leadTail,
  gel: leadTail,
  flooded: [
    [0, 10.5 / 6],
    [0.02, 11 / 6],
    [0.05, 11.4 / 6],
  ],
  lfp: [[0.03, 2.75]],
};

/** Charges at which the electrode functions of the NMC cell are read; the engine interpolates between them. */
const nmcCharges = [
  0, 0.01, 0.02, 0.03, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1,
];

/**
 * Rest voltages of a cell of a chemistry at 25 °C over its charge, from empty to full: the tables of the catalogue, with
 * what those leave out filled in; NMC from its electrode functions.
 */
export function restPoints(chemistry: Chemistry): Points {
  if (chemistry === 'nmc')
    return nmcCharges.map((charge) => [charge, nmcRestVoltageV(100 * charge)] as const);
  const { points, cellGroups } = openCircuitTables[chemistry];
  const all: Points = [
    ...filledIn[chemistry],
    ...points.map(([percent, voltageV]) => [percent / 100, voltageV / cellGroups] as const),
  ];
  return all.toSorted((a, b) => a[0] - b[0]);
}
