import type { UncertainInput } from './input.ts';

/** z of the 90th percentile of the standard normal distribution. */
export const z90 = 1.2815515655446004;

/** Draws farther out than this are drawn in: no figure of a part is believed beyond it. */
const farthestZ = 3;

/**
 * Value of an input at a standard normal deviate: a normal (or log-normal) distribution whose two halves have their own
 * widths, so that z = 0 gives the likely value and z = -1.28 and 1.28 give low and high exactly.
 *
 * `ratio`: `likely (high/likely)^(z/1.28)` above, `likely (likely/low)^(z/1.28)` below;
 * `difference`: the same with sums (derived).
 *
 * @param z standard normal deviate; drawn in to -3 to 3
 */
export function valueAt(
  input: Pick<UncertainInput, 'low' | 'likely' | 'high' | 'shape' | 'least' | 'most'>,
  z: number,
): number {
  const { low, likely, high, shape, least, most } = input;
  const far = Math.min(farthestZ, Math.max(-farthestZ, z)) / z90;
  const value =
    shape === 'ratio'
      ? likely * (far < 0 ? likely / low : high / likely) ** far
      : likely + (far < 0 ? likely - low : high - likely) * far;
  return Math.min(most, Math.max(least, value));
}
