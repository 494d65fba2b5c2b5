import type { FittedValue } from '../../plan/schema/bench.ts';
import type { FitRemark } from './fit-remark.ts';
import type { Parameter, ParameterName } from './parameters.ts';

interface ValueKind {
  readonly title: string;
  readonly unit: string;
  readonly logarithm: boolean;
  /** From the coordinate's quantity to the value shown, for a block of so many cell groups. */
  readonly show: (quantity: number, cellGroups: number) => number;
}

const same = (quantity: number) => quantity;

/** The values a reader is shown, in the order in which they are fitted. */
const valueKinds: Readonly<Partial<Record<ParameterName, ValueKind>>> = {
  resistance: {
    title: 'ohmic resistance',
    unit: 'mΩ',
    logarithm: true,
    show: (ohm, cells) => ohm * cells * 1000,
  },
  polarisation: {
    title: 'polarisation against ohmic resistance',
    unit: '',
    logarithm: true,
    show: same,
  },
  polarisationTime: { title: 'polarisation time', unit: 's', logarithm: true, show: same },
  capacity: { title: 'charge when full', unit: 'A·h', logarithm: true, show: same },
  boundRatio: {
    title: 'share of the available well',
    unit: '',
    logarithm: false,
    show: (ratio) => 1 / (1 + ratio),
  },
  levelling: {
    title: 'levelling rate of the wells',
    unit: '1/min',
    logarithm: true,
    show: (perS) => perS * 60,
  },
  knee: {
    title: 'knee resistance',
    unit: 'mΩ',
    logarithm: false,
    show: (ohm, cells) => ohm * cells * 1000,
  },
  coldRate: { title: 'resistance rise in the cold', unit: '1/K', logarithm: false, show: same },
};

/** Two-sided 95 % of a normal distribution. */
const confidence = 1.96;
/** A value whose spread is still this share of what was assumed has not been told by the data. */
const toldBelow = 0.7;
const correlatedAbove = 0.9;
/** Scatter of the capacity of one test against the next (1 sigma), which no single fit can see. Common practice, no source. */
const repeatability = 0.01;

/** Values with their 95 % limits, and whether the data told them. */
export function fittedValues(
  parameters: readonly Parameter[],
  coordinates: readonly number[],
  covariance: readonly Float64Array[],
  cellGroups: number,
): FittedValue[] {
  return parameters.flatMap((parameter, place) => {
    const kind = valueKinds[parameter.name];
    if (kind === undefined) return [];
    const own = Math.sqrt(Math.max(0, covariance[place]![place]!));
    const spread =
      parameter.name === 'capacity' ? Math.hypot(own, repeatability / parameter.sigma) : own;
    const at = (shift: number) => {
      const raw = parameter.prior + parameter.sigma * (coordinates[place]! + shift);
      const within = Math.min(parameter.max, Math.max(parameter.min, raw));
      return kind.show(kind.logarithm ? Math.exp(within) : within, cellGroups);
    };
    const [a, b] = [at(-confidence * spread), at(confidence * spread)];
    return [
      {
        name: kind.title,
        unit: kind.unit,
        value: at(0),
        low: Math.min(a, b),
        high: Math.max(a, b),
        identified: own < toldBelow,
      },
    ];
  });
}

/** Which values the data could not tell, and which pairs they could not tell apart. */
export function identifiability(
  parameters: readonly Parameter[],
  covariance: readonly Float64Array[],
): FitRemark[] {
  const shown = parameters.flatMap((parameter, place) => {
    const kind = valueKinds[parameter.name];
    return kind === undefined
      ? []
      : [{ place, title: kind.title, spread: Math.sqrt(Math.max(0, covariance[place]![place]!)) }];
  });
  const told = shown.filter(({ spread }) => spread < toldBelow);
  const untold = shown
    .filter(({ spread }) => spread >= toldBelow)
    .map(({ title }): FitRemark => ({ kind: 'not-told', name: title }));
  const pairs = told.flatMap((first, index) =>
    told.slice(index + 1).flatMap((second): FitRemark[] => {
      const correlation = covariance[first.place]![second.place]! / (first.spread * second.spread);
      return Math.abs(correlation) > correlatedAbove
        ? [{ kind: 'together', first: first.title, second: second.title, correlation }]
        : [];
    }),
  );
  return [...untold, ...pairs];
}
