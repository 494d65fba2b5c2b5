import { levenbergMarquardt } from 'ml-levenberg-marquardt';

/** A parameter of a model with the bounds it must stay within. */
export interface FitParameter {
  readonly start: number;
  readonly min: number;
  readonly max: number;
}

export interface CurveFit {
  readonly parameters: readonly number[];
  /** Model minus data for each point, in order. */
  readonly residuals: readonly number[];
  /** Weighted sum of squared residuals. */
  readonly cost: number;
}

type Model = (parameters: readonly number[], x: number) => number;

/** Step of the difference quotients, as a share of a parameter's range. */
const differenceShare = 1e-6;

/**
 * Bounded non-linear least squares: the parameters that bring `model` closest to the points.
 *
 * The library's Levenberg-Marquardt wants parameters of similar size, so each one runs from 0 to 1 over its bounds.
 * It stops on a bound without sliding along it; hence a second pass with the parameters on bounds held there.
 *
 * @param x @param y coordinates, equally many, at least two and at least as many as parameters
 * @param model value at x for given parameters; finite within the bounds and never asked beyond them
 * @param weights weight of each squared residual, above 0; all 1 when absent
 */
export function fitCurve(
  x: readonly number[],
  y: readonly number[],
  model: Model,
  parameters: readonly FitParameter[],
  weights?: readonly number[],
): CurveFit {
  const toModel = (shares: readonly number[]) =>
    parameters.map(({ min, max }, i) => min + (max - min) * shares[i]!);
  const shareModel: Model = (shares, at) => model(toModel(shares), at);
  const start = parameters.map(({ start: at, min, max }) =>
    Math.min(1, Math.max(0, (at - min) / (max - min))),
  );
  const all = start.map((_, i) => i);
  const first = search(x, y, shareModel, start, all, weights);
  const inside = all.filter((i) => first[i]! > 1e-9 && first[i]! < 1 - 1e-9);
  const shares =
    inside.length === all.length || inside.length === 0
      ? first
      : search(x, y, shareModel, first, inside, weights);
  const best = toModel(shares);
  const residuals = x.map((at, i) => model(best, at) - y[i]!);
  const cost = residuals.reduce((sum, r, i) => sum + (weights?.[i] ?? 1) * r * r, 0);
  return { parameters: best, residuals, cost };
}

/** One run of the library over the parameters in `free`; the others stay at `start`. All run from 0 to 1. */
function search(
  x: readonly number[],
  y: readonly number[],
  model: Model,
  start: readonly number[],
  free: readonly number[],
  weights: readonly number[] | undefined,
): number[] {
  const complete = (values: readonly number[]) => {
    const shares = [...start];
    for (const [k, index] of free.entries()) shares[index] = values[k]!;
    return shares;
  };
  const derivative = (values: readonly number[], k: number, at: number) => {
    const low = values.with(k, Math.max(0, values[k]! - differenceShare));
    const high = values.with(k, Math.min(1, values[k]! + differenceShare));
    return (model(complete(high), at) - model(complete(low), at)) / (high[k]! - low[k]!);
  };
  const fitted = levenbergMarquardt(
    { x: [...x], y: [...y] },
    (values) => {
      const shares = complete(values);
      return (at) => model(shares, at);
    },
    {
      initialValues: free.map((index) => start[index]!),
      minValues: free.map(() => 0),
      maxValues: free.map(() => 1),
      jacobianFunction: (values) => (at) => free.map((_, k) => derivative(values, k, at)),
      // The library divides by the square of its weights.
      weights: weights === undefined ? 1 : weights.map((weight) => 1 / Math.sqrt(weight)),
      damping: 1e-3,
      maxIterations: 400,
      errorTolerance: 1e-20,
    },
  );
  return complete(fitted.parameterValues);
}
