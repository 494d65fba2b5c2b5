/**
 * Linear interpolation of values on an evenly spaced grid, by one multiplication instead of a search.
 *
 * @param values values at `start`, `start + step`, ... ; at least one
 * @param start first grid place
 * @param step grid spacing, above 0
 * @param x place to read; outside the grid the end values hold
 */
export function interpolateUniform(
  values: ArrayLike<number>,
  start: number,
  step: number,
  x: number,
): number {
  const last = values.length - 1;
  if (last < 0) throw new Error('interpolateUniform needs at least one value');
  const place = (x - start) / step;
  if (place <= 0) return values[0]!;
  if (place >= last) return values[last]!;
  const index = Math.floor(place);
  const low = values[index]!;
  return low + (values[index + 1]! - low) * (place - index);
}
