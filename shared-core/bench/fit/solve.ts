import { covarianceAt, descend, type Residuals } from '../../numerics/descend.ts';
import {
  misfits,
  modelVolts,
  priorResiduals,
  type FitProblem,
  type Observations,
} from './residuals.ts';

export interface Solution {
  readonly coordinates: readonly number[];
  /** Model minus measured at every observation, per cell group [V]. */
  readonly residualV: Float64Array;
  /** Share of its weight that each observation kept; 0 for an outlier. */
  readonly trust: Float64Array;
  /** Weighted rms of the residuals, per cell group [V]. */
  readonly rmsV: number;
  /** Covariance of the coordinates, row by row. */
  readonly covariance: readonly Float64Array[];
}

/** Smallest and largest error a volt per cell group is credited with [V]: meters are no better, models no worse. */
const sigmaRangeV = [0.001, 0.03] as const;

/**
 * Finds the most likely coordinates. Rows that stand out from their neighbours count less or not at all; the usual
 * size of a residual is taken from the residuals themselves.
 */
export function solve(problem: FitProblem, observations: Observations): Solution {
  const units = Math.max(...problem.runs.map((run) => run.cellV.length));
  const bounds = {
    min: problem.parameters.map(({ min, prior, sigma }) => (min - prior) / sigma),
    max: problem.parameters.map(({ max, prior, sigma }) => (max - prior) / sigma),
  };
  let inflation = 1;
  let sigmaV = 0.01;
  let coordinates: readonly number[] = problem.parameters.map((parameter) =>
    parameter.name === 'unitStart' ? 0.1 : 0,
  );
  let trust: Float64Array = new Float64Array(observations.count).fill(1);
  let residualV: Float64Array = new Float64Array(observations.count);
  const weighted = () =>
    observations.weight.map(
      (own, place) =>
        (own * trust[place]!) /
        (units * inflation * (sigmaV ** 2 + observations.chargeErrorV[place]! ** 2)),
    );
  for (let round = 0; round < rounds.length; round += 1) {
    coordinates = descend(
      allResiduals(problem, observations, weighted()),
      coordinates,
      bounds,
      rounds[round]!,
    );
    residualV = misfits(observations, modelVolts(problem, observations, coordinates));
    sigmaV = Math.min(
      sigmaRangeV[1],
      Math.max(
        sigmaRangeV[0],
        rms(
          residualV,
          observations.weight.map((own, place) => own * trust[place]!),
        ),
      ),
    );
    inflation = correlationInflation(residualV, observations);
    trust = trusted(residualV, observations);
  }
  return {
    coordinates,
    residualV,
    trust,
    rmsV: rms(
      residualV,
      observations.weight.map((own, place) => own * (trust[place]! > 0 ? 1 : 0)),
    ),
    covariance: covarianceAt(allResiduals(problem, observations, weighted()), coordinates, bounds),
  };
}

/** Iterations of each round: a coarse one, then with outliers weighed down. */
const rounds = [25, 15, 10];

/** Volts and priors as one list of residuals, each in units of its own sigma. */
function allResiduals(
  problem: FitProblem,
  observations: Observations,
  weight: Float64Array,
): Residuals {
  const root = weight.map((own) => Math.sqrt(own));
  return (coordinates) => {
    const off = misfits(observations, modelVolts(problem, observations, coordinates));
    const pulls = priorResiduals(problem, coordinates);
    const all = new Float64Array(off.length + pulls.length);
    for (let place = 0; place < off.length; place += 1) all[place] = root[place]! * off[place]!;
    all.set(pulls, off.length);
    return all;
  };
}

/**
 * Tukey's biweight of what stands out from both sides of its neighbourhood, in units of the usual stand-out. A misfit that
 * grows along the curve, or a whole run that disagrees with the others, is evidence and no outlier.
 */
function trusted(residualV: Float64Array, observations: Observations): Float64Array {
  const standOut = residualV.map((residual, place) => {
    const side = (from: number) => {
      const near: number[] = [];
      for (let other = from; other < from + 4; other += 1) {
        const same =
          observations.runOf[other] === observations.runOf[place] &&
          observations.unitOf[other] === observations.unitOf[place];
        if (same) near.push(residualV[other]!);
      }
      return near.length < 2 ? null : median(near);
    };
    const before = side(place - 4);
    const after = side(place + 1);
    if (before === null || after === null) return 0;
    const high = Math.max(before, after);
    const low = Math.min(before, after);
    return residual > high ? residual - high : Math.min(0, residual - low);
  });
  const usualV = Math.max(sigmaRangeV[0], 3 * median(Array.from(standOut, Math.abs)));
  return standOut.map((value) => {
    const share = value / (6 * usualV);
    return Math.abs(share) < 1 ? (1 - share * share) ** 2 : 0;
  });
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
}

/** How much less the rows tell than their number suggests: neighbours that err alike count once. */
function correlationInflation(residualV: Float64Array, observations: Observations): number {
  let own = 0;
  let both = 0;
  for (let place = 1; place < residualV.length; place += 1) {
    if (
      observations.runOf[place] !== observations.runOf[place - 1] ||
      observations.unitOf[place] !== observations.unitOf[place - 1]
    )
      continue;
    own += residualV[place]! ** 2;
    both += residualV[place]! * residualV[place - 1]!;
  }
  const correlation = own > 0 ? Math.min(0.6, Math.max(0, both / own)) : 0;
  return (1 + correlation) / (1 - correlation);
}

function rms(values: Float64Array, weight: Float64Array): number {
  let sum = 0;
  let total = 0;
  values.forEach((value, place) => {
    sum += weight[place]! * value * value;
    total += weight[place]!;
  });
  return Math.sqrt(sum / Math.max(total, 1e-12));
}
