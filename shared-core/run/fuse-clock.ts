/**
 * Time a blade fuse carries a multiple of its rating [s]: geometric middle of the gates of ISO 8820-3 (gates from memory,
 * to be confirmed against the standard), on logarithmic scales. Infinite up to 1.1 times the rating.
 */
const middles: readonly (readonly [ratio: number, seconds: number])[] = [
  [1.1, 360_000],
  [1.35, Math.sqrt(0.75 * 600)],
  [1.6, Math.sqrt(0.25 * 50)],
  [2, Math.sqrt(0.15 * 5)],
  [3.5, Math.sqrt(0.04 * 0.5)],
  [6, Math.sqrt(0.02 * 0.1)],
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
