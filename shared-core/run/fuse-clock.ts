import { bladeFuseGates, bladeFuseHolds } from '../formulas/wiring/blade-fuse-gates.ts';

/**
 * Time a blade fuse carries a multiple of its rating [s]: geometric middle of the catalogue's gates (ISO 8820-3, from
 * memory), on logarithmic scales. Infinite up to the multiple a fuse holds.
 */
const middles: readonly (readonly [ratio: number, seconds: number])[] = [
  [bladeFuseHolds.times, bladeFuseHolds.atLeastS],
  ...bladeFuseGates.map(
    ({ times, earliestS, latestS }) => [times, Math.sqrt(earliestS * latestS)] as const,
  ),
];

export function fuseOpeningS(ratio: number): number {
  if (ratio <= middles[0]![0]) return Number.POSITIVE_INFINITY;
  for (let index = 1; index < middles.length; index += 1) {
    const [high, highS] = middles[index]!;
    if (ratio > high && index < middles.length - 1) continue;
    const [low, lowS] = middles[index - 1]!;
    const share = Math.log(ratio / low) / Math.log(high / low);
    return lowS * (highS / lowS) ** share;
  }
  return 0;
}

/** Wear of a fuse over a step: the share of its opening time that the step uses up; it opens when the sum reaches 1. */
export function fuseWear(currentA: number, ratingA: number, stepS: number): number {
  return stepS / fuseOpeningS(Math.abs(currentA) / ratingA);
}
