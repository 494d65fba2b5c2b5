import type { CareThresholds } from '../plan/schema/week.ts';
import { ambientC } from './ambient.ts';
import type { WeekModel } from './week-model.ts';

/** How the packs come through the time in which the machine is not used. */
export interface StoragePlan {
  readonly days: number;
  /** Month in which storage begins, 1 to 12. */
  readonly firstMonth: number;
  /** Charge to store at [%]. */
  readonly startPercent: number;
  /** Charge at the end if nobody comes by [%], and the day on which the limit of storage is passed; null when never. */
  readonly endPercentAlone: number;
  readonly belowLimitDay: number | null;
  /** Days of storage on which to top up. */
  readonly topUpDays: readonly number[];
  /** Lowest charge when topped up [%]. */
  readonly lowestPercent: number;
  readonly coldestC: number;
  /** Lead only: at the charge reached alone and the coldest day the acid could freeze. */
  readonly mayFreeze: boolean;
}

/** Charge of a lead block below which it can freeze at -10 °C and colder [%]; common practice from handbook tables, from memory. */
const freezePercent = 40;
const freezeC = -10;
/** Below this a lithium pack must be topped up: its BMS still draws [%]. Common practice, no source. */
const lithiumFloorPercent = 20;

/** Works out storage for the weeks of the year that are not in the season; null when there are none. */
export function storagePlan(model: WeekModel, care: CareThresholds): StoragePlan | null {
  const { season, climate, isolatedWhenParked } = model.week;
  const days = Math.round((52.18 - season.weeks) * 7);
  if (days < 7) return null;
  const startMonth = (season.firstMonth - 1 + (season.weeks * 12) / 52.18) % 12;
  const temperatureOn = (day: number) => ambientC(climate, startMonth + (day * 12) / 365.25);
  const startPercent = model.lithium
    ? (care.lithiumStorageLowPercent + care.lithiumStorageHighPercent) / 2
    : 100;
  const limitPercent = model.lithium ? care.lithiumStorageLowPercent : care.leadStoragePercent;
  const topUpBelow = model.lithium ? lithiumFloorPercent : 0;
  let alone = startPercent;
  let kept = startPercent;
  let lowestPercent = startPercent;
  let coldestC = Number.POSITIVE_INFINITY;
  let belowLimitDay: number | null = null;
  let sinceTopUp = 0;
  const topUpDays: number[] = [];
  for (let day = 1; day <= days; day += 1) {
    const temperatureC = temperatureOn(day);
    const loss = model.drain(temperatureC, isolatedWhenParked) * 1440;
    alone = Math.max(0, alone - loss);
    kept = Math.max(0, kept - loss);
    sinceTopUp += 1;
    coldestC = Math.min(coldestC, temperatureC);
    lowestPercent = Math.min(lowestPercent, kept);
    if (belowLimitDay === null && alone < limitPercent) belowLimitDay = day;
    const due = model.lithium
      ? kept < topUpBelow + 5
      : sinceTopUp >= care.leadTopUpDays || kept < limitPercent;
    if (due && day < days) {
      topUpDays.push(day);
      kept = startPercent;
      sinceTopUp = 0;
    }
  }
  return {
    days,
    firstMonth: Math.floor(startMonth) + 1,
    startPercent,
    endPercentAlone: alone,
    belowLimitDay,
    topUpDays,
    lowestPercent,
    coldestC,
    mayFreeze: !model.lithium && alone < freezePercent && coldestC < freezeC,
  };
}
