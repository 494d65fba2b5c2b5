import { solveLinear } from './solve-linear.ts';

/** Residuals of a least-squares problem, each in units of its own sigma, for a point of the search. */
export type Residuals = (coordinates: readonly number[]) => Float64Array;

export interface Bounds {
  readonly min: readonly number[];
  readonly max: readonly number[];
}

/** Difference step of the derivatives; coordinates are scaled so that 1 is one sigma of the prior. */
const step = 1e-4;

/**
 * Bounded damped least squares (Levenberg, Q. Appl. Math. 2 (1944) 164; damping per coordinate after Marquardt). A step
 * is taken only if it lowers the sum of squares; coordinates that press against a bound are held there for the step.
 *
 * Own code because the least-squares library at hand takes worsening steps, which never come back from beyond the knee of
 * a discharge curve, and offers no derivatives at the end, which the confidence limits need.
 */
export function descend(
  residuals: Residuals,
  start: readonly number[],
  bounds: Bounds,
  iterations: number,
): number[] {
  let here = start.map((value, index) => clamp(value, index, bounds));
  let values = residuals(here);
  let cost = sumOfSquares(values);
  let damping = 1e-2;
  for (let round = 0; round < iterations; round += 1) {
    const slopes = derivatives(residuals, here, values, bounds);
    const gradient = slopes.map((slope) => dot(slope, values));
    const free = [...here.keys()].filter(
      (index) =>
        !(here[index]! <= bounds.min[index]! && gradient[index]! > 0) &&
        !(here[index]! >= bounds.max[index]! && gradient[index]! < 0),
    );
    const curvature = free.map((a) => Float64Array.from(free, (b) => dot(slopes[a]!, slopes[b]!)));
    let gained = 0;
    for (let attempt = 0; attempt < 8; attempt += 1) {
      const matrix = curvature.map((row, index) => {
        const damped = Float64Array.from(row);
        damped[index] = damped[index]! * (1 + damping) + 1e-9;
        return damped;
      });
      const move = solveLinear(
        matrix,
        Float64Array.from(free, (index) => -gradient[index]!),
      );
      const there = [...here];
      if (move !== null)
        free.forEach(
          (index, place) => (there[index] = clamp(here[index]! + move[place]!, index, bounds)),
        );
      const valuesThere = residuals(there);
      const costThere = sumOfSquares(valuesThere);
      if (move !== null && costThere < cost) {
        gained = (cost - costThere) / cost;
        here = there;
        values = valuesThere;
        cost = costThere;
        damping = Math.max(1e-7, damping / 5);
        break;
      }
      damping = Math.min(1e8, damping * 6);
    }
    if (gained < 1e-5) break;
  }
  return here;
}

/** Inverse of the curvature of the half sum of squares at a point: the covariance of the coordinates. */
export function covarianceAt(
  residuals: Residuals,
  here: readonly number[],
  bounds: Bounds,
): Float64Array[] {
  const slopes = derivatives(residuals, here, residuals(here), bounds);
  const curvature = slopes.map((a) => Float64Array.from(slopes, (b) => dot(a, b)));
  return here.map((_, index) => {
    const unit = new Float64Array(here.length);
    unit[index] = 1;
    const matrix = curvature.map((row, place) => {
      const copy = Float64Array.from(row);
      copy[place] = copy[place]! + 1e-9;
      return copy;
    });
    return solveLinear(matrix, unit) ?? unit;
  });
}

/** One column of derivatives per coordinate; the step goes inwards from an upper bound. */
function derivatives(
  residuals: Residuals,
  here: readonly number[],
  values: Float64Array,
  bounds: Bounds,
): Float64Array[] {
  return here.map((value, index) => {
    const by = value + step > bounds.max[index]! ? -step : step;
    const moved = [...here];
    moved[index] = value + by;
    return residuals(moved).map((residual, place) => (residual - values[place]!) / by);
  });
}

function clamp(value: number, index: number, { min, max }: Bounds): number {
  return Math.min(max[index]!, Math.max(min[index]!, value));
}

function sumOfSquares(values: Float64Array): number {
  return dot(values, values);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < a.length; index += 1) sum += a[index]! * b[index]!;
  return sum;
}
