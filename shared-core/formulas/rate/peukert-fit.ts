import { fitLine } from '../../numerics/fit-line.ts';
import { defineFormula } from '../define-formula.ts';
import { list, number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/** Peukert's law fitted to ratings. */
export interface PeukertFit {
  /** k [1]. */
  readonly exponent: number;
  /** Standard error of k [1]; null with two ratings. */
  readonly exponentError: number | null;
  /** ln t at 1 A, t in hours: `ln t = logTimeAtOneAmp - k ln I`. */
  readonly logTimeAtOneAmp: number;
  /** Stated over fitted time, minus 1, for each rating, in order [1]. */
  readonly residuals: readonly number[];
}

/**
 * Peukert exponent from two or more ratings, by least squares on `ln t = a - k ln I`, `I = C/t`.
 *
 * Source: regression of the logarithm of the law (derived).
 *
 * @param hours @param capacityAh times [h] and capacities [A·h] of the ratings, equally many, above 0
 * @returns null where the ratings hold fewer than two different currents
 */
export function fitPeukert(
  hours: readonly number[],
  capacityAh: readonly number[],
): PeukertFit | null {
  const logCurrent = hours.map((time, i) => Math.log(capacityAh[i]! / time));
  const line = fitLine(logCurrent, hours.map(Math.log));
  if (line === null) return null;
  return {
    exponent: -line.slope,
    exponentError: line.slopeError,
    logTimeAtOneAmp: line.intercept,
    residuals: line.residuals.map(Math.expm1),
  };
}

/** Capacity the fitted law gives over another time [A·h]: `I H` with `ln I = (a - ln H)/k`. */
export function fittedCapacityAh(fit: PeukertFit, hours: number): number {
  return hours * Math.exp((fit.logTimeAtOneAmp - Math.log(hours)) / fit.exponent);
}

export const peukertFitFormula = defineFormula({
  id: 'peukert-fit',
  title: 'Peukert exponent fitted to many ratings',
  equation: 'least squares on ln t = a - k ln I, I = C/t',
  inputs: {
    hours: list('h', 0.01, 200, 'times of the ratings'),
    capacityAh: list('A·h', 0.01, 10_000, 'capacities of the ratings, in the same order'),
    referenceHours: number('h', 0.1, 200, 'time for which the fitted capacity is given', 20),
  },
  outputs: {
    exponent: ['1', 'Peukert exponent'],
    exponentError: ['1', 'standard error of the exponent; none with two ratings'],
    referenceCapacityAh: ['A·h', 'capacity of the fitted law at the reference time'],
    residualPercent: ['%', 'stated time against fitted time of each rating, minus 100 %'],
    largestResidualPercent: ['%', 'largest of them without sign'],
  },
  assumptions: 'All ratings at the same temperature, to comparable end voltages.',
  validity:
    'Between the currents of the ratings; large residuals say that one exponent does not fit.',
  source: { class: 'derived', citation: 'least squares on the logarithm of Peukert’s law' },
  compute: ({ hours, capacityAh, referenceHours }) => {
    if (hours.length !== capacityAh.length) {
      return fail(
        'capacityAh',
        `has ${capacityAh.length} values for ${hours.length} times`,
        'Give one capacity for each time.',
      );
    }
    const fit = fitPeukert(hours, capacityAh);
    if (fit === null || !(fit.exponent > 0)) {
      return fail(
        'hours',
        'and capacityAh hold no two ratings from which an exponent follows',
        'Give ratings at two or more different currents, the larger current with the shorter time.',
      );
    }
    const residualPercent = fit.residuals.map((residual) => 100 * residual);
    return {
      values: {
        exponent: fit.exponent,
        exponentError: fit.exponentError,
        referenceCapacityAh: fittedCapacityAh(fit, referenceHours),
        residualPercent,
        largestResidualPercent: Math.max(...residualPercent.map(Math.abs)),
      },
    };
  },
});
