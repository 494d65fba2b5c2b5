import {
  selfDischargeAtTemperature,
  selfDischargePercentPerMonth,
} from '../formulas/temperature/self-discharge.ts';
import { monthDays } from '../formulas/temperature/self-discharge.ts';
import type { Chemistry } from '../plan/schema/block.ts';
import type { Machine } from '../plan/schema/machine.ts';
import { converterLoss, converterPoint, noDemand } from './converter-input.ts';

/** Lithium packs lose about this much a month at 20 °C, BMS included [%]. Common practice, no source. */
const lithiumPercentPerMonth = 3;

/**
 * Current the switched-off machine draws from the pack [A]: a converter that stays on with what it feeds, and accessories
 * straight on the pack.
 *
 * @param packV voltage of the resting pack [V]
 */
export function standbyCurrentA(machine: Machine, packV: number): number {
  const standby = (supply: 'converter' | 'pack' | 'mid-point') =>
    machine.accessories
      .filter((accessory) => accessory.supply === supply)
      .reduce((sum, accessory) => sum + accessory.standbyA, 0);
  const direct = standby('pack') + standby('mid-point');
  const { converter } = machine;
  if (converter === null || !converter.alwaysOn) return direct;
  const point = converterPoint(
    converter,
    converterLoss(converter),
    { ...noDemand, currentA: standby('converter') },
    packV,
  );
  return direct + point.inputPowerW / packV;
}

/** Charge a resting pack loses by itself, percent per month at a temperature. */
export function selfDischargePercent(chemistry: Chemistry, temperatureC: number): number {
  const at20C =
    chemistry === 'lfp' || chemistry === 'nmc'
      ? lithiumPercentPerMonth
      : selfDischargePercentPerMonth[chemistry].likely;
  return selfDischargeAtTemperature(at20C, temperatureC);
}

/**
 * Days until a share of the pack's capacity is gone while the machine stands switched off; null when nothing draws
 * current, since self-discharge alone is a matter of storage.
 *
 * @param capacityAh capacity of the pack [A·h] @param share to be lost, 0 to 1
 */
export function standbyDays(
  drawA: number,
  capacityAh: number,
  chemistry: Chemistry,
  temperatureC: number,
  share: number,
): number | null {
  if (drawA <= 0) return null;
  const ownAhPerDay =
    (capacityAh * selfDischargePercent(chemistry, temperatureC)) / 100 / monthDays;
  return (capacityAh * share) / (drawA * 24 + ownAhPerDay);
}
