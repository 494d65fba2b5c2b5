import type { Charger } from '../plan/schema/charger.ts';
import {
  packAtStart,
  ratedCapacityAh,
  type ChargeableOption,
  type ChargeConditions,
} from './charge-option.ts';
import { chargerProgram } from './charger-program.ts';
import type { ChargeResult } from './charge-result.ts';
import { simulateCharge, usualWishes } from './simulate-charge.ts';

/** whole: one charger across the string. one-after-another: one block charger moved on. isolated-each: a block charger for each block, their outputs isolated from one another. */
export type ChargeWay = 'whole' | 'one-after-another' | 'isolated-each';

export interface ChargeWayResult {
  readonly way: ChargeWay;
  readonly chargersNeeded: number;
  readonly hours: number;
  readonly weakestPercent: number;
  readonly strongestPercent: number;
  /** Highest voltage any block stood at [V]. */
  readonly highestBlockV: number;
  /** Most charge that went into gas or heat in one block [A·h]. */
  readonly mostGassedAh: number;
}

/**
 * Charges the pack as a whole, block after block, and block by block at once, to show what unequal blocks gain from being
 * charged singly. The block charger is the given one scaled to a block: same current, tail and hours, voltages divided by
 * the blocks in series. Only the whole where there is one block in series.
 */
export function compareChargeWays(
  option: ChargeableOption,
  charger: Charger,
  conditions: ChargeConditions,
): ChargeWayResult[] {
  const { temperatureC, startPercent } = conditions;
  const pack = packAtStart(option, temperatureC, startPercent);
  const wishes = { ...usualWishes, ...conditions.wishes };
  const program = chargerProgram(charger, temperatureC, ratedCapacityAh(option));
  const whole = simulateCharge(pack, program, wishes);
  const ways: ChargeWayResult[] = [wayOf('whole', 1, whole.hours, [whole])];
  const { seriesCount, parallelCount } = option.pack;
  if (seriesCount === 1) return ways;
  const blockProgram = {
    ...program,
    endVoltageV: program.endVoltageV / seriesCount,
    floatVoltageV: program.floatVoltageV === null ? null : program.floatVoltageV / seriesCount,
    sourceResistanceOhm: program.sourceResistanceOhm / seriesCount,
    tailCurrentA: program.tailCurrentA === null ? null : program.tailCurrentA / parallelCount,
  };
  const results: ChargeResult[] = [];
  let sumHours = 0;
  for (const string of pack.strings) {
    for (const unit of string.units) {
      const alone = {
        leadOhm: 0,
        strings: [{ count: 1, linkOhm: 0, units: [{ ...unit, count: 1 }] }],
      };
      const result = simulateCharge(alone, blockProgram, wishes);
      results.push(result);
      sumHours += result.hours * unit.count * string.count;
    }
  }
  ways.push(wayOf('one-after-another', 1, sumHours, results));
  ways.push(
    wayOf(
      'isolated-each',
      seriesCount * parallelCount,
      Math.max(...results.map((result) => result.hours)),
      results,
    ),
  );
  return ways;
}

function wayOf(
  way: ChargeWay,
  chargersNeeded: number,
  hours: number,
  results: readonly ChargeResult[],
): ChargeWayResult {
  const units = results.flatMap((result) => result.units);
  return {
    way,
    chargersNeeded,
    hours,
    weakestPercent: Math.min(...units.map((unit) => unit.endPercent)),
    strongestPercent: Math.max(...units.map((unit) => unit.endPercent)),
    highestBlockV: Math.max(...units.map((unit) => unit.highestV)),
    mostGassedAh: Math.max(...units.map((unit) => unit.gassedAh)),
  };
}
