import type { ChargerAssumption } from './charger-program.ts';

/** What the charger is doing. `ended`: it has switched off. */
export type ChargeStage = 'bulk' | 'absorption' | 'float' | 'ended';

/** Stages as they stand in the column `stage`. */
export const chargeStages = [
  'bulk',
  'absorption',
  'float',
  'ended',
] as const satisfies readonly ChargeStage[];

/** Why the charging proper ended. */
export type ChargeEnd =
  /** The current fell to the charger's tail current: it calls the pack full. */
  | 'tail-current'
  /** The charger's timer ran out. */
  | 'timer'
  /** A cell group reached its limit and the BMS opened. */
  | 'bms-group-high'
  /** The current was above what the BMS lets in, and it opened. */
  | 'bms-over-current'
  /** The charge wanted was reached. */
  | 'target'
  /** The time asked for ran out while the charger was still at work. */
  | 'unplugged'
  /** The charger cannot push current into this pack at all. */
  | 'no-current';

export interface ChargeSeries {
  readonly timeH: Float64Array;
  readonly voltageV: Float64Array;
  readonly currentA: Float64Array;
  /** Charge of the whole pack, percent of its capacity in these conditions. */
  readonly chargePercent: Float64Array;
  /** Index into `chargeStages`. */
  readonly stage: Uint8Array;
  /** Highest and lowest voltage per cell group among the units, to show blocks that drift apart. */
  readonly highestCellV: Float64Array;
  readonly lowestCellV: Float64Array;
}

/** What a charge did to one block or cell group. */
export interface ChargedUnit {
  readonly label: string;
  readonly string: number;
  readonly position: number;
  readonly group: number | null;
  readonly count: number;
  readonly startPercent: number;
  readonly endPercent: number;
  readonly highestV: number;
  /** Charge that went past the plates into gas or heat [A·h]. */
  readonly gassedAh: number;
  /** Charge burnt by balancing [A·h]. */
  readonly bledAh: number;
}

export interface ChargeResult {
  readonly endedBy: ChargeEnd;
  /** Hours until the charger ends its charge or the time asked for is over. */
  readonly hours: number;
  /** Hours until the charger calls the pack full: see `hoursOnCharger`. */
  readonly hoursToFull: number | null;
  /** Hours in which the current limit ruled. */
  readonly bulkHours: number;
  /** Hours until the pack holds 80 % and 98 %; null when it never gets there. */
  readonly hoursTo80: number | null;
  readonly hoursTo98: number | null;
  readonly startPercent: number;
  readonly endPercent: number;
  readonly inAh: number;
  readonly inWh: number;
  /** Ah stored over Ah put in [%]; null when nothing went in. */
  readonly chargeEfficiencyPercent: number | null;
  readonly mainsWh: number;
  readonly peakMainsW: number;
  readonly highestPackV: number;
  readonly units: readonly ChargedUnit[];
  readonly assumed: readonly ChargerAssumption[];
  readonly series: ChargeSeries;
}

/** Charge from which the core calls a pack full: the last 2 % of a lead block take as long as the 20 % before. */
export const fullPercent = 98;
