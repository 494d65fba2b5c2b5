import type { Climate } from '../plan/schema/week.ts';

/**
 * Mean temperature at a time of the year [°C]: `mean + half the swing * cos(2 pi (m - warmest)/12)`. Derived: the first
 * harmonic of the year; days differ from it by several kelvin.
 *
 * @param month time in months from the beginning of January, 0.5 is mid-January
 */
export function ambientC(climate: Climate, month: number): number {
  const mean = (climate.warmestMonthC + climate.coldestMonthC) / 2;
  const swing = (climate.warmestMonthC - climate.coldestMonthC) / 2;
  return mean + swing * Math.cos((2 * Math.PI * (month - (climate.warmestMonth - 0.5))) / 12);
}

/** Temperatures are looked up in steps of this size [K]: outings and charges change little in less. */
export const temperatureStepK = 5;

export function temperatureBin(temperatureC: number): number {
  return Math.min(
    60,
    Math.max(-30, Math.round(temperatureC / temperatureStepK) * temperatureStepK),
  );
}

/** Month (from 0.0 at the beginning of January) at the middle of week `week` of a season that begins in `firstMonth`. */
export function monthOfWeek(firstMonth: number, week: number): number {
  return (firstMonth - 1 + ((week + 0.5) * 12) / 52.18) % 12;
}
