import { openCircuitNodes } from '../../battery/deviated-curve.ts';
import type { CellPrior } from './prior.ts';

/** Values a fit may move. `unit` entries exist once per unit. */
export type ParameterName =
  | 'capacity'
  | 'boundRatio'
  | 'levelling'
  | 'resistance'
  | 'polarisation'
  | 'polarisationTime'
  | 'knee'
  | 'coldRate'
  | 'openCircuit'
  | 'unitCapacity'
  | 'unitResistance'
  | 'unitStart'
  | 'runStart';

/**
 * One coordinate of the search: `(value - prior)/sigma`, where the value is a logarithm for positive quantities. In these
 * coordinates every prior is a unit step, which is what a damped search needs.
 */
export interface Parameter {
  readonly name: ParameterName;
  /** Node, unit or run it belongs to; 0 for the rest. */
  readonly index: number;
  readonly prior: number;
  readonly sigma: number;
  readonly min: number;
  readonly max: number;
}

export interface ParameterChoice {
  readonly units: number;
  /** Starting guess of the full charge [A·h]: a little above the deepest discharge seen. */
  readonly capacityGuessAh: number;
  /** Runs that did not begin full, with the share of charge already out, as far as it is known. */
  readonly starts: readonly {
    readonly run: number;
    readonly spent: number;
    readonly sigma: number;
  }[];
  /** True where a logged temperature moves enough to tell how resistance depends on it. */
  readonly temperatureTells: boolean;
}

const make = (
  name: ParameterName,
  prior: number,
  sigma: number,
  min: number,
  max: number,
  index = 0,
): Parameter => ({ name, index, prior, sigma, min, max });

/** The coordinates of a fit, in the order of its steps: resistance, capacity, rate, knee, curve, differences. */
export function fitParameters(prior: CellPrior, choice: ParameterChoice): Parameter[] {
  const logged = (name: ParameterName, value: number, sigma: number, reach: number, index = 0) =>
    make(name, Math.log(value), sigma, Math.log(value) - reach, Math.log(value) + reach, index);
  const many = (count: number, one: (index: number) => Parameter) =>
    Array.from({ length: count }, (_, index) => one(index));
  return [
    logged('resistance', prior.resistanceOhm, 0.7, 3.5),
    logged('polarisation', prior.polarisationRatio, 0.5, 3.5),
    logged('polarisationTime', prior.polarisationS, 1, 3),
    logged('capacity', choice.capacityGuessAh, 0.3, 1.5),
    make('boundRatio', prior.boundRatio, prior.boundRatioSigma, 0, 49),
    logged('levelling', prior.levellingPerS, 1, 3),
    make('knee', prior.kneeOhm, prior.kneeSigmaOhm, 0, prior.resistanceOhm * 30),
    ...(choice.temperatureTells
      ? [make('coldRate', prior.coldRatePerK, prior.coldRateSigma, 0, 0.15)]
      : []),
    // Empty is defined as the voltage at which the usual curve is empty: without that pin, charge and curve slide together.
    ...many(openCircuitNodes.length, (index) =>
      make('openCircuit', 0, index === 0 ? 0.003 : prior.openCircuitSigmaV * 2, -0.6, 0.6, index),
    ),
    ...choice.starts.map(({ run, spent, sigma }) => make('runStart', spent, sigma, 0, 0.95, run)),
    ...(choice.units > 1
      ? [
          ...many(choice.units, (index) => make('unitCapacity', 0, 0.08, -1.2, 0.4, index)),
          ...many(choice.units, (index) => make('unitResistance', 0, 0.15, -1.5, 2.5, index)),
          ...many(choice.units, (index) => make('unitStart', 0, 0.015, 0, 0.4, index)),
        ]
      : []),
  ];
}
