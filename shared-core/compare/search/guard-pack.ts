import type { Pack } from '../../plan/schema/option.ts';
import type { RunResult } from '../../run/result.ts';
import { fuseClasses } from '../../wiring/fuse-classes.ts';

/** Ratings of fuses that are made for batteries [A], rising. */
const ratingsA = [
  ...new Set([...fuseClasses.blade.ratingsA, ...fuseClasses['bolt-down'].ratingsA]),
].toSorted((one, other) => one - other);

/** The next rating made that carries a lasting current with margin and is never below the peak [A]. */
function nextRatingA(continuousA: number, peakA: number, margin: number): number | null {
  const least = Math.max(margin * continuousA, peakA);
  return ratingsA.find((rating) => rating >= least) ?? null;
}

/**
 * A pack with a main fuse, and with a fuse in each of several strings: sized by the run so that none opens in normal
 * use. A string may carry the whole load for a while when another is off, so its fuse allows for half as much again as
 * its share (common practice, no source).
 *
 * @param margin rating over lasting current [1]
 */
export function guardPack(
  pack: Pack,
  { averageCurrentA, peakCurrentA }: Pick<RunResult, 'averageCurrentA' | 'peakCurrentA'>,
  limitA: number | null,
  margin: number,
): Pack {
  const peakA = Math.max(peakCurrentA, limitA ?? 0);
  const share = 1.5 / pack.parallelCount;
  return {
    ...pack,
    mainFuseA: nextRatingA(averageCurrentA, peakA, margin),
    stringFuseA:
      pack.parallelCount === 1 ? null : nextRatingA(share * averageCurrentA, share * peakA, margin),
  };
}
