import { interpolateLogLog } from '../numerics/interpolate-table.ts';
import type { Fuse } from '../plan/schema/wiring-branch.ts';
import { fuseClasses } from './fuse-classes.ts';

/** Between which times a fuse opens at a current; `Infinity` stands for never or not surely. */
export interface OpeningBand {
  readonly earliestS: number;
  readonly latestS: number;
}

/**
 * Opening time of a fuse, by power laws between the gates of its class. Below the first gate it may hold for ever; above
 * the last one both limits follow `I^2 t` (derived).
 *
 * @param currentA not negative [A]
 */
export function fuseOpening(fuse: Pick<Fuse, 'class' | 'ratedA'>, currentA: number): OpeningBand {
  const { gates, holds } = fuseClasses[fuse.class];
  const times = currentA / fuse.ratedA;
  const first = gates[0]!;
  const last = gates[gates.length - 1]!;
  if (times <= holds.times) return { earliestS: Infinity, latestS: Infinity };
  if (times < first.times) {
    const share = Math.log(times / holds.times) / Math.log(first.times / holds.times);
    return {
      earliestS: holds.atLeastS * (first.earliestS / holds.atLeastS) ** share,
      latestS: Infinity,
    };
  }
  if (times > last.times) {
    const fall = (last.times / times) ** 2;
    return { earliestS: last.earliestS * fall, latestS: last.latestS * fall };
  }
  const read = (key: 'earliestS' | 'latestS') =>
    interpolateLogLog(
      gates.map((gate) => [gate.times, gate[key]]),
      times,
    );
  return { earliestS: read('earliestS'), latestS: read('latestS') };
}
