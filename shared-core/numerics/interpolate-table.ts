/**
 * Linear interpolation in a table of points whose first coordinate rises strictly; the spacing may be uneven.
 *
 * Outside the table the end values hold: a table says nothing about what lies beyond it.
 *
 * @param points at least one pair of x and y, x strictly rising
 * @param x place to read
 */
export function interpolateTable(
  points: readonly (readonly [x: number, y: number])[],
  x: number,
): number {
  const last = points.length - 1;
  if (last < 0) throw new Error('interpolateTable needs at least one point');
  if (x <= points[0]![0]) return points[0]![1];
  if (x >= points[last]![0]) return points[last]![1];
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (points[middle]![0] <= x) low = middle;
    else high = middle;
  }
  const [x0, y0] = points[low]!;
  const [x1, y1] = points[high]!;
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/**
 * Interpolation of a table on logarithmic axes, for quantities that follow a power law between points.
 *
 * @param points pairs of positive x and positive y, x strictly rising
 * @param x place to read, positive
 */
export function interpolateLogLog(
  points: readonly (readonly [x: number, y: number])[],
  x: number,
): number {
  const logs = points.map(([px, py]) => [Math.log(px), Math.log(py)] as const);
  return Math.exp(interpolateTable(logs, Math.log(x)));
}
