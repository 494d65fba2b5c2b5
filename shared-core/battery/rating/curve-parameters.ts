import type { Block } from '../../plan/schema/block.ts';
import { chemistryTraits } from '../chemistry.ts';
import { defaultResistanceOhm } from '../default-resistance.ts';
import { deviatedTable, openCircuitNodes, usualTable } from '../deviated-curve.ts';
import { heatResistanceKPerW } from '../heat.ts';
import { monotoneCurve } from '../monotone-curve.ts';
import { resistanceFactorAtTemperature } from '../temperature.ts';

/** What is looked for in discharge curves besides the rest voltages. */
export const curveParameterNames = [
  'capacity',
  'rateLoss',
  'levelling',
  'resistance',
  'polarisation',
  'polarisationTime',
  'knee',
] as const;
export type CurveParameterName = (typeof curveParameterNames)[number];

/** One cell group as the fit sees it, at the rating temperature. */
export interface CurveCell {
  readonly capacityAh: number;
  /** `(1 - c)/c`: charge bound per charge available. */
  readonly boundRatio: number;
  readonly levellingPerH: number;
  readonly resistanceOhm: number;
  readonly polarisationOhm: number;
  readonly polarisationS: number;
  readonly kneeOhm: number;
  /** Final warming per watt of the cell [K/W], its time [s], and the fall of the resistances with it [1/K]. */
  readonly heatResistanceKPerW: number;
  readonly heatS: number;
  readonly coldRatePerK: number;
  /** Rest voltages on the grid of `deviatedTable`. */
  readonly restV: Float64Array;
}

/** What is assumed before the curves are looked at, and how to read a point of the search. */
export interface CurvePrior {
  readonly size: number;
  readonly min: readonly number[];
  readonly max: readonly number[];
  cellAt(coordinates: readonly number[]): CurveCell;
}

/** Spread of rest curves among makers, per cell [V]. Common practice, no source. */
const restSigmaV = { agm: 0.04, gel: 0.04, flooded: 0.04, lfp: 0.05, nmc: 0.12 } as const;

/** A resistance stated by the user is trusted this far (sigma of its logarithm); one assumed, that far. */
const statedSigma = 0.1;
const assumedSigma = 0.5;

/**
 * Coordinates of the search: 1 is one sigma of what is usual for the chemistry, 0 the usual value. Sigmas: common
 * practice, no source.
 *
 * @param largestAh most charge any curve takes out [A·h] @param usual likely `(1 - c)/c` and levelling rate
 */
export function curvePrior(
  block: Block,
  largestAh: number,
  usual: { readonly boundRatio: number; readonly levellingPerH: number },
): CurvePrior {
  const traits = chemistryTraits[block.chemistry];
  const cells = block.cellGroups;
  const assumedOhm =
    ((block.resistanceOhm ?? defaultResistanceOhm(block)) *
      resistanceFactorAtTemperature(block.chemistry, traits.ratedC)) /
    cells;
  const resistanceSigma = block.resistanceOhm === null ? assumedSigma : statedSigma;
  const rest = usualTable(monotoneCurve(traits.openCircuit));
  const sigmaV = restSigmaV[block.chemistry];
  const ratioSigma = traits.family === 'lead' ? Math.max(0.3, usual.boundRatio) : 0.05;
  const kneeOhm = assumedOhm * traits.kneeShare;
  const heatKPerW = heatResistanceKPerW(block);
  const heat = {
    heatResistanceKPerW: heatKPerW * cells,
    heatS: heatKPerW * traits.heatJPerAhK * block.capacityAh * cells,
    coldRatePerK: traits.resistanceColdRatePerK,
  };
  const fixed = curveParameterNames.length;
  const size = fixed + openCircuitNodes.length;
  const min = Array.from({ length: size }, () => -5);
  const max = Array.from({ length: size }, () => 5);
  // Neither a negative rate loss nor a negative knee.
  min[1] = -usual.boundRatio / ratioSigma;
  min[6] = -1;
  return {
    size,
    min,
    max,
    cellAt: (at) => ({
      capacityAh: largestAh * 1.03 * Math.exp(0.15 * at[0]!),
      boundRatio: usual.boundRatio + ratioSigma * at[1]!,
      levellingPerH: usual.levellingPerH * Math.exp(at[2]!),
      resistanceOhm: assumedOhm * Math.exp(resistanceSigma * at[3]!),
      polarisationOhm: assumedOhm * traits.polarisation.share * Math.exp(0.7 * at[4]!),
      polarisationS: traits.polarisation.timeS * Math.exp(0.7 * at[5]!),
      kneeOhm: kneeOhm * (1 + at[6]!),
      ...heat,
      restV: deviatedTable(
        rest,
        Float64Array.from(at.slice(fixed), (value) => sigmaV * value),
      ),
    }),
  };
}
