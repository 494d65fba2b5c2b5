/** Straight line through points, with what is left over. */
export interface LineFit {
  readonly slope: number;
  readonly intercept: number;
  /** `y - (intercept + slope x)` for each point, in order. */
  readonly residuals: readonly number[];
  /** Standard error of the slope; null with two points, which leave nothing to judge it by. */
  readonly slopeError: number | null;
}

/**
 * Weighted least-squares line `y = intercept + slope x`.
 *
 * @param x @param y coordinates, equally many, at least two different x with weight
 * @param weights weight of each squared residual, not negative; all 1 when absent
 * @returns null when the points do not determine a line
 */
export function fitLine(
  x: readonly number[],
  y: readonly number[],
  weights?: readonly number[],
): LineFit | null {
  const weightOf = (index: number) => (weights === undefined ? 1 : (weights[index] ?? 0));
  let total = 0;
  let meanX = 0;
  let meanY = 0;
  for (let i = 0; i < x.length; i += 1) {
    const weight = weightOf(i);
    total += weight;
    meanX += weight * x[i]!;
    meanY += weight * (y[i] ?? Number.NaN);
  }
  if (!(total > 0)) return null;
  meanX /= total;
  meanY /= total;
  // Sums about the means keep the digits that the plain normal equations lose.
  let xx = 0;
  let xy = 0;
  let scale = 0;
  for (let i = 0; i < x.length; i += 1) {
    const dx = x[i]! - meanX;
    xx += weightOf(i) * dx * dx;
    xy += weightOf(i) * dx * (y[i]! - meanY);
    scale += weightOf(i) * x[i]! * x[i]!;
  }
  if (!(xx > 1e-24 * scale) || !Number.isFinite(xy)) return null;
  const slope = xy / xx;
  const intercept = meanY - slope * meanX;
  const residuals = x.map((xi, i) => y[i]! - (intercept + slope * xi));
  const left = residuals.reduce((sum, r, i) => sum + weightOf(i) * r * r, 0);
  const freedom = x.length - 2;
  return {
    slope,
    intercept,
    residuals,
    slopeError: freedom > 0 ? Math.sqrt(left / freedom / xx) : null,
  };
}
