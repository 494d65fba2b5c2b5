import { percentileOfSorted } from '../../numerics/percentile.ts';

/** A percentile of a sample with the error that comes from the sample being finite. */
export interface EstimatedPercentile {
  readonly value: number;
  /** One standard error of the percentile, in the unit of the value. */
  readonly error: number;
}

/**
 * Percentile with its sampling error: half the distance between the order statistics one binomial standard deviation
 * either way, `n p ± sqrt(n p (1 - p))`, which supposes no shape of the distribution. It holds for independent draws;
 * Latin sampling lies a little below it, so that the figure is on the safe side (derived).
 *
 * @param sorted rising, at least one value
 * @param percent 0 to 100
 */
export function estimatedPercentile(
  sorted: ArrayLike<number>,
  percent: number,
): EstimatedPercentile {
  const share = percent / 100;
  const step = 100 * Math.sqrt((share * (1 - share)) / sorted.length);
  return {
    value: percentileOfSorted(sorted, percent),
    error:
      (percentileOfSorted(sorted, percent + step) - percentileOfSorted(sorted, percent - step)) / 2,
  };
}
