import type { Chemistry } from '../plan/schema/block.ts';
import type { UniformTable } from '../battery/uniform-table.ts';

/** Side current that does not charge: `currentA * exp(perVolt * (V - referenceV))`, volts of the whole unit. */
export interface Gassing {
  readonly currentA: number;
  readonly referenceV: number;
  readonly perVolt: number;
}

/** Passive balancing of a cell group: above `startV` the BMS burns `currentA` beside the group. */
export interface Balancing {
  readonly startV: number;
  readonly currentA: number;
}

/**
 * A block or a cell group as a charger sees it. Charge current is positive here.
 *
 * `V = OCV(sigma) + hysteresis + I (R0 + Ka / (1 + delta - sigma)) + v_p`, `v_p' = (I R1 - v_p)/tau`,
 * `sigma' = (I - I_gas(V) - I_bleed)/Q`. The Ka term is the Shepherd polarisation written for charging (J. Electrochem.
 * Soc. 112 (1965) 657; Tremblay & Dessaint, World Electric Vehicle J. 3 (2009)): the nearer to full, the more volts an
 * ampere needs, so that current tapers once the voltage is held. Charging is slow against the levelling of the two wells,
 * so the wells are taken as level.
 */
export interface ChargeUnit {
  readonly label: string;
  readonly chemistry: Chemistry;
  readonly cellGroups: number;
  /** How many identical units stand in series. */
  readonly count: number;
  /** Position of the first one in its string, from 1. */
  readonly position: number;
  /** Cell group in its block, from 1; null for a whole block. */
  readonly group: number | null;
  readonly capacityAh: number;
  /** Over the charge sigma in [0, 1], volts of one unit. */
  readonly openCircuit: UniformTable;
  readonly hysteresisV: number;
  readonly resistanceOhm: number;
  /** Ka [Ω] and delta [1]. */
  readonly acceptanceOhm: number;
  readonly acceptanceRoom: number;
  readonly polarisationOhm: number;
  readonly polarisationS: number;
  readonly gassing: Gassing | null;
  readonly balancing: Balancing | null;
  /** Voltage of one unit at which its BMS opens; null without BMS. */
  readonly opensAboveV: number | null;
  /** Charge current at which its BMS opens [A]; null where none is stated. */
  readonly opensAboveA: number | null;
  /** Charge at the start, 0 to 1. */
  readonly startShare: number;
}

/** Strings in parallel, each `count` times. */
export interface ChargeString {
  readonly units: readonly ChargeUnit[];
  readonly count: number;
  /** Links and leads of one string [Ω]. */
  readonly linkOhm: number;
}

export interface ChargePack {
  readonly strings: readonly ChargeString[];
  /** Lead from the charger to the pack [Ω]. */
  readonly leadOhm: number;
}
