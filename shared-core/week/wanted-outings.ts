import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Usage } from '../plan/schema/week.ts';
import { dayIndex, minutesPerDay, minutesPerWeek } from './clock.ts';
import type { WeekModel } from './week-model.ts';

/** An outing that somebody sets out for. */
export interface WantedOuting {
  readonly usage: Usage;
  readonly dayIndex: number;
  /** Minutes after the first Monday 0:00 of the season. */
  readonly startMin: number;
  readonly wantedMin: number;
}

/**
 * The outings of a season in order of time. Chances are dealt by a seeded generator in a fixed order, so that every
 * routine meets the same weeks.
 *
 * @param dealChances false takes every use with a chance of at least one half, for a typical week
 */
export function wantedOutings(
  model: WeekModel,
  weeks: number,
  dealChances: boolean,
): WantedOuting[] {
  const random = xoroshiro128plus(model.week.season.seed);
  const outings: WantedOuting[] = [];
  for (let week = 0; week < weeks; week += 1) {
    for (const usage of model.week.usage) {
      for (const day of usage.days) {
        const takesPlace = dealChances
          ? uniformFloat64(random) * 100 < usage.chancePercent
          : usage.chancePercent >= 50;
        if (!takesPlace) continue;
        const index = dayIndex(day);
        outings.push({
          usage,
          dayIndex: index,
          startMin: week * minutesPerWeek + index * minutesPerDay + usage.startMin,
          wantedMin: model.wantedMin(usage.outingId, usage.durationMin),
        });
      }
    }
  }
  return outings.toSorted((a, b) => a.startMin - b.startMin);
}
