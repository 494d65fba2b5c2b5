import type { Chemistry } from '../plan/schema/block.ts';

/** How a cell takes charge, beyond its resistance. Per cell group and per ampere-hour of capacity. */
export interface ChargeBehaviour {
  /** Ka of the acceptance term times the capacity [V·h]. */
  readonly acceptanceVh: number;
  /** delta of the acceptance term [1]. */
  readonly acceptanceRoom: number;
  /** Side current at two cell voltages, per A·h at 25 °C: `[V, A/(A·h)]`; null where none is modelled. */
  readonly gassing: readonly [readonly [number, number], readonly [number, number]] | null;
  /** Cell-group voltage at which a usual BMS begins to balance [V]; null for lead. */
  readonly balanceFromV: number | null;
}

/**
 * Sealed lead: acceptance from a measured recharge of one 17 Ah AGM block (2.7 A to 14.4 V, J. Electrochem. Soc. 166
 * (2019) A2363, data by the authors): tuned on its rise to that voltage, held against the charge of its taper. Its side current lies between the float and the boost figure of IEC 62485-2 for
 * valve-regulated cells (1 and 8 mA/Ah, which are on the safe side) and meets the charge balance of that recharge; it
 * grows by a factor of e each 1/11 V (Schiffer et al., J. Power Sources 168 (2007) 66, from memory). Vented lead: 1 and
 * 4 mA/Ah at 2.23 and 2.40 V (the standard's 5 and 20 hold a safety factor of 5).
 * Lithium: acceptance so that the voltage bends up over the last hundredths of the charge at usual rates (common
 * practice, no source); coulombic loss is below 1 % and neglected.
 */
export const chargeBehaviours: Readonly<Record<Chemistry, ChargeBehaviour>> = {
  agm: {
    acceptanceVh: 0.42,
    acceptanceRoom: 0.005,
    gassing: [
      [2.27, 0.0017],
      [2.4, 0.007],
    ],
    balanceFromV: null,
  },
  gel: {
    acceptanceVh: 0.46,
    acceptanceRoom: 0.005,
    gassing: [
      [2.27, 0.0017],
      [2.4, 0.007],
    ],
    balanceFromV: null,
  },
  flooded: {
    acceptanceVh: 0.4,
    acceptanceRoom: 0.005,
    gassing: [
      [2.23, 0.001],
      [2.4, 0.004],
    ],
    balanceFromV: null,
  },
  lfp: { acceptanceVh: 0.018, acceptanceRoom: 0.002, gassing: null, balanceFromV: 3.45 },
  nmc: { acceptanceVh: 0, acceptanceRoom: 0.01, gassing: null, balanceFromV: 4.12 },
};

/** Current of passive balancing in a small BMS [A]. Common practice, no source. */
export const usualBalanceA = 0.05;

/** Acceptance resistance grows by exp(rate * (25 - temperature)) [1/K]. Common practice, no source. */
export const acceptanceColdRatePerK = 0.02;

/** Side currents double with each 10 K (Arrhenius rule of thumb used for float currents; common practice). */
export const gassingDoublesPerK = 10;
