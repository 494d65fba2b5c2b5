import { fitCurve } from '../../numerics/fit-curve.ts';
import { defineFormula } from '../define-formula.ts';
import { list } from '../input-spec.ts';
import { fail } from '../read-input.ts';
import type { Wells } from './two-well.ts';
import { wellLifetimeH } from './two-well-lifetime.ts';

/** Two wells fitted to ratings by charge alone. */
export interface WellFit extends Wells {
  /** Fitted over stated time at the rating's current, minus 1, for each rating, in order [1]. */
  readonly residuals: readonly number[];
}

const leastShare = 0.02;
const slowestPerH = 1e-3;
const fastestPerH = 100;

/**
 * Q, c and k' from three or more ratings: least squares on the logarithm of fitted over stated time, each at the
 * current of its rating, within 0.02 <= c <= 1 and 0.001 <= k' <= 100 per hour. Logarithms, as for Peukert's law, so
 * that an hour counts as much as a day.
 *
 * The rate is searched by its logarithm from several starts, since the sum of squares can have more than one low.
 * Source: closed form of Manwell & McGowan 1993 fitted to the points (derived).
 *
 * @param hours @param capacityAh times [h] and capacities [A·h] of the ratings, equally many, at least three, above 0
 */
export function fitWellsToRatings(
  hours: readonly number[],
  capacityAh: readonly number[],
): WellFit {
  const largest = Math.max(...capacityAh);
  const wellsOf = (p: readonly number[]): Wells => ({
    capacityAh: p[0]! * largest,
    availableShare: p[1]!,
    levellingPerH: Math.exp(p[2]!),
  });
  const logTimeRatio = (p: readonly number[], index: number) =>
    Math.log(wellLifetimeH(wellsOf(p), capacityAh[index]! / hours[index]!) / hours[index]!);
  const places = hours.map((_, index) => index);
  const zeros = hours.map(() => 0);
  const fits = [0.05, 0.3, 1, 5].map((rate) =>
    fitCurve(places, zeros, logTimeRatio, [
      { start: 1.1, min: 0.8, max: 5 },
      { start: 0.5, min: leastShare, max: 1 },
      { start: Math.log(rate), min: Math.log(slowestPerH), max: Math.log(fastestPerH) },
    ]),
  );
  const best = fits.reduce((low, fit) => (fit.cost < low.cost ? fit : low));
  return { ...wellsOf(best.parameters), residuals: best.residuals.map(Math.expm1) };
}

export const twoWellFitFormula = defineFormula({
  id: 'two-well-fit',
  title: 'Two wells fitted to ratings',
  equation: 'least squares on ln(t(Q, c, k′; I)/T) with I = C/T and t the root of q1(t) = 0',
  inputs: {
    hours: list('h', 0.01, 200, 'times of the ratings, three or more'),
    capacityAh: list('A·h', 0.01, 10_000, 'capacities of the ratings, in the same order'),
  },
  outputs: {
    capacityAh: ['A·h', 'charge of both wells when full, Q'],
    availableShare: ['1', 'share of the available well, c'],
    levellingPerH: ['1/h', 'rate at which the wells level, k′'],
    residualPercent: ['%', 'fitted against stated time of each rating, minus 100 %'],
    largestResidualPercent: ['%', 'largest of them without sign'],
  },
  assumptions: 'Ratings end when the available well is empty; voltage does not enter.',
  validity: 'Between the times of the ratings.',
  source: {
    class: 'derived',
    citation: 'least squares on the closed form of Manwell & McGowan, Solar Energy 50 (1993) 399',
  },
  compute: ({ hours, capacityAh }) => {
    if (hours.length !== capacityAh.length) {
      return fail(
        'capacityAh',
        `has ${capacityAh.length} values for ${hours.length} times`,
        'Give one capacity for each time.',
      );
    }
    if (new Set(hours).size < 3) {
      return fail(
        'hours',
        'holds fewer than three different times',
        'Give ratings at three or more times.',
      );
    }
    const { residuals, ...wells } = fitWellsToRatings(hours, capacityAh);
    const residualPercent = residuals.map((residual) => 100 * residual);
    return {
      values: {
        ...wells,
        residualPercent,
        largestResidualPercent: Math.max(...residualPercent.map(Math.abs)),
      },
    };
  },
});
