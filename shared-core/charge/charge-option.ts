import type { Charger } from '../plan/schema/charger.ts';
import type { Option } from '../plan/schema/option.ts';
import type { RunResult } from '../run/result.ts';
import { chargePack, type StartPercent } from './charge-pack.ts';
import type { ChargePack } from './charge-unit.ts';
import type { ChargeResult } from './charge-result.ts';
import { chargerProgram } from './charger-program.ts';
import { simulateCharge, usualWishes, type ChargeWishes } from './simulate-charge.ts';

/** The part of an option a charge depends on. */
export type ChargeableOption = Pick<Option, 'pack' | 'startPercent'>;

export interface ChargeConditions {
  /** Temperature of blocks and charger [°C]. */
  readonly temperatureC: number;
  /** Charge at the start [%]: one figure for all blocks, one for each, or null for the plan's own. */
  readonly startPercent: number | StartPercent | null;
  readonly wishes?: Partial<ChargeWishes>;
}

/** Rated capacity of a pack: block capacity times strings [A·h]. */
export function ratedCapacityAh(option: ChargeableOption): number {
  return option.pack.block.capacityAh * option.pack.parallelCount;
}

/** The pack at the start of a charge. A single figure leaves blocks that start apart from the rest where they are. */
export function packAtStart(
  option: ChargeableOption,
  temperatureC: number,
  startPercent: ChargeConditions['startPercent'],
): ChargePack {
  if (typeof startPercent === 'function') return chargePack(option, temperatureC, startPercent);
  return chargePack(startPercent === null ? option : { ...option, startPercent }, temperatureC);
}

/**
 * Simulates the charge of an option by a charger, whether they match or not: what a mismatch does is part of the answer.
 * Whether the charger may be used is for `matchCharger` to say.
 */
export function chargeOption(
  option: ChargeableOption,
  charger: Charger,
  conditions: ChargeConditions,
): ChargeResult {
  const { temperatureC, startPercent, wishes } = conditions;
  const pack = packAtStart(option, temperatureC, startPercent);
  const program = chargerProgram(charger, temperatureC, ratedCapacityAh(option));
  return simulateCharge(pack, program, { ...usualWishes, ...wishes });
}

/** The charge each block was left with by a run, as the start of a charge. */
export function startAfterRun(run: Pick<RunResult, 'blocks'>): StartPercent {
  return (string, position, group) =>
    run.blocks.find(
      (block) =>
        block.strings.includes(string) &&
        block.positions.includes(position) &&
        block.group === group,
    )?.remainingPercent ?? null;
}
