import type { BlockModel } from '../battery/block-model.ts';
import type { Bms } from '../plan/schema/block.ts';

/** The smallest thing simulated: a block, or one cell group of a block. Equal neighbours are simulated once. */
export interface PackUnit {
  readonly model: BlockModel;
  /** How many equal units in series this one stands for in its string. */
  readonly count: number;
  /** Charge at the start, 0 to 1 of the unit's capacity in the run's conditions. */
  readonly startCharge: number;
  /** Positions in the string, from 1. */
  readonly positions: readonly number[];
  /** Cell group in the block, from 1; null when the block is simulated as one. */
  readonly group: number | null;
  readonly name: string;
  readonly bms: Bms | null;
  /** True when a mid-point tap draws through this unit. */
  readonly belowTap: boolean;
}

/** A string, standing for all strings equal to it. */
export interface PackString {
  readonly units: readonly PackUnit[];
  /** Which strings of the pack this one stands for, from 1. */
  readonly strings: readonly number[];
  readonly linkOhm: number;
  readonly fuseA: number | null;
}

export interface PackModel {
  readonly strings: readonly PackString[];
  readonly mainFuseA: number | null;
  /** Charge a full pack can give at the lowest rate in the run's conditions: over the strings, the weakest unit [A·h]. */
  readonly capacityAh: number;
}
