/**
 * Percentile of a sample by linear interpolation between order statistics (definition 7 of Hyndman & Fan,
 * Am. Statistician 50 (1996) 361).
 *
 * @param sample at least one finite value, in any order; it is not changed
 * @param percent 0 to 100
 */
export function percentile(sample: ArrayLike<number>, percent: number): number {
  return percentileOfSorted(Float64Array.from(sample).toSorted(), percent);
}

/** Percentile of a sample that is already in rising order; see `percentile`. */
export function percentileOfSorted(sorted: ArrayLike<number>, percent: number): number {
  const last = sorted.length - 1;
  if (last < 0) throw new Error('a percentile needs at least one value');
  const place = (Math.min(100, Math.max(0, percent)) / 100) * last;
  const index = Math.floor(place);
  const low = sorted[index]!;
  return index === last ? low : low + (sorted[index + 1]! - low) * (place - index);
}
