import { deviatedTable, openCircuitNodes } from '../../battery/deviated-curve.ts';
import type { Parameter } from './parameters.ts';
import type { CellPrior } from './prior.ts';
import type { CellValues, UnitState } from './replay.ts';

/** The quantities behind a point of the search. */
export interface Decoded {
  readonly cell: CellValues;
  /** Share of capacity, of resistance, and charge at the start, one per unit. */
  readonly units: readonly UnitState[];
  readonly deviations: Float64Array;
  /** Share of charge already out at the begin of runs that did not begin full, by the place of the run. */
  readonly spent: ReadonlyMap<number, number>;
}

/** Turns coordinates into quantities. Coordinates outside the bounds are drawn onto them. */
export function decode(
  parameters: readonly Parameter[],
  coordinates: readonly number[],
  prior: CellPrior,
  referenceC: number,
): Decoded {
  const single = new Map<string, number>();
  const deviations = new Float64Array(openCircuitNodes.length);
  const capacityShares: number[] = [];
  const resistanceShares: number[] = [];
  const starts: number[] = [];
  const spent = new Map<number, number>();
  parameters.forEach((parameter, place) => {
    const raw = parameter.prior + parameter.sigma * coordinates[place]!;
    const value = Math.min(parameter.max, Math.max(parameter.min, raw));
    switch (parameter.name) {
      case 'openCircuit':
        deviations[parameter.index] = value;
        break;
      case 'unitCapacity':
        capacityShares[parameter.index] = Math.exp(value);
        break;
      case 'unitResistance':
        resistanceShares[parameter.index] = Math.exp(value);
        break;
      case 'unitStart':
        starts[parameter.index] = 1 - value;
        break;
      case 'runStart':
        spent.set(parameter.index, value);
        break;
      default:
        single.set(parameter.name, value);
    }
  });
  const log = (name: string) => Math.exp(single.get(name)!);
  return {
    cell: {
      capacityAh: log('capacity'),
      boundRatio: single.get('boundRatio')!,
      levellingPerS: log('levelling'),
      resistanceOhm: log('resistance'),
      polarisationOhm: log('resistance') * log('polarisation'),
      polarisationS: log('polarisationTime'),
      kneeOhm: single.get('knee')!,
      coldRatePerK: single.get('coldRate') ?? prior.coldRatePerK,
      referenceC,
      openCircuit: deviatedTable(prior.usualOpenCircuit, deviations),
      hysteresisV: prior.hysteresisV,
      heatCapacityJPerK: prior.heatCapacityJPerK,
      coolingPerS: prior.coolingPerS,
    },
    units:
      capacityShares.length === 0
        ? [{ capacityShare: 1, resistanceShare: 1, startCharge: 1 }]
        : capacityShares.map((capacityShare, unit) => ({
            capacityShare,
            resistanceShare: resistanceShares[unit]!,
            startCharge: starts[unit]!,
          })),
    deviations,
    spent,
  };
}
