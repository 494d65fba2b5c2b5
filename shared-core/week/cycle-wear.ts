import { capacityShareAtAge, fullDepthCycleLife } from '../battery/ageing.ts';
import { chemistryTraits } from '../battery/chemistry.ts';
import { agmCycleLife } from '../formulas/temperature/cycle-life.ts';
import type { Chemistry } from '../plan/schema/block.ts';

/**
 * Discharges of one depth until a fifth of the capacity is gone. Lead: the AGM curve (200, 500, 1200 at 100, 50, 30 %, from
 * memory of makers' curves) scaled to the chemistry's full-depth life, carried on by its last power below 30 %.
 * Lithium: inversely as the depth (common practice, no source).
 *
 * @param depth share of the capacity taken out, above 0 to 1
 */
export function cyclesAtDepth(chemistry: Chemistry, depth: number): number {
  const full = fullDepthCycleLife(chemistry);
  if (chemistryTraits[chemistry].family === 'lithium') return full / depth;
  const scale = full / agmCycleLife(100);
  if (depth >= 0.3) return scale * agmCycleLife(100 * depth);
  const power = Math.log(agmCycleLife(30) / agmCycleLife(50)) / Math.log(50 / 30);
  return scale * agmCycleLife(30) * (0.3 / depth) ** power;
}

/**
 * Seasons (years) until a fifth of the capacity is gone: wear of the season's discharges (Miner's sum) and of the calendar
 * at the mean temperature, added.
 *
 * @param wearPerSeason sum of 1/cycles over the discharges of a season [1]
 * @returns seasons, at most 50
 */
export function expectedSeasons(
  chemistry: Chemistry,
  wearPerSeason: number,
  meanC: number,
): number {
  const calendarPerYear = (1 - capacityShareAtAge(chemistry, 1, 0, meanC)) / 0.2;
  return Math.min(50, 1 / Math.max(0.02, wearPerSeason + calendarPerYear));
}
