import { buildBlock, chemistryTraits } from '../../battery/index.ts';
import { shareAgainstRating } from '../../battery/temperature.ts';
import { monotoneCurve } from '../../battery/monotone-curve.ts';
import type { Block } from '../../plan/schema/block.ts';
import { usualTable } from '../../battery/deviated-curve.ts';

/** What is assumed of one cell group before the log is looked at, and how far each assumption may be off (1 sigma). */
export interface CellPrior {
  readonly capacityAh: number;
  /** What the label promises: charge over so many hours of a block at this temperature [A·h], [h]. */
  readonly rated: { readonly capacityAh: number; readonly hours: number };
  /** Lead: from the label's rate loss. Lithium: none, its loss at higher rates lies in the resistances. */
  readonly boundRatio: number;
  readonly boundRatioSigma: number;
  readonly levellingPerS: number;
  readonly resistanceOhm: number;
  /** Polarisation over ohmic resistance: the two are steps of one process and rise together. */
  readonly polarisationRatio: number;
  readonly polarisationS: number;
  /** A knee of its own is usual for lead; lithium's lies in its open-circuit curve. */
  readonly kneeOhm: number;
  readonly kneeSigmaOhm: number;
  readonly coldRatePerK: number;
  readonly coldRateSigma: number;
  readonly usualOpenCircuit: Float64Array;
  /** How far the open-circuit curve may lie from the usual one, and how rough the difference may be [V]. */
  readonly openCircuitSigmaV: number;
  readonly openCircuitRoughnessV: number;
  readonly hysteresisV: number;
  readonly heatCapacityJPerK: number;
  readonly coolingPerS: number;
  readonly leadAcid: boolean;
  readonly chemistry: Block['chemistry'];
  readonly cellGroups: number;
}

/** Spread of open-circuit curves among makers, per cell [V]: the kin of one chemistry differ most for NMC. Common practice, no source. */
const curveSigmaV = { agm: 0.02, gel: 0.02, flooded: 0.02, lfp: 0.03, nmc: 0.08 } as const;

/**
 * Share of the rate loss of a default exponent that a fit starts from. The default is meant to be safe for planning;
 * tests of sealed blocks show exponents near 1.05 or none at all, flooded ones more. Common practice, no source.
 */
const guessedShare = { agm: 0.25, gel: 0.25, flooded: 0.5, lfp: 1, nmc: 1 } as const;

/**
 * Polarisation of whole discharges, which includes the slow spreading of charge inside the plates that a run of minutes
 * does not show. Common practice, no source.
 */
const polarisationRatio = { lead: 0.8, lithium: 1 } as const;
const polarisationS = { lead: 120, lithium: 120 } as const;

/**
 * Prior of a block from its label and chemistry at a temperature. An earlier fit of the block is not used: a fit starts
 * from the label each time, so that the order of fits does not matter.
 */
export function cellPrior(block: Block, temperatureC: number): CellPrior {
  const traits = chemistryTraits[block.chemistry];
  const { model } = buildBlock(
    { ...block, fitted: null },
    { temperatureC, ageYears: 0, cyclesDone: 0, capacityPercent: 100, resistancePercent: 100 },
  );
  const cells = block.cellGroups;
  const lead = traits.family === 'lead';
  const guessed = block.rating.kind === 'exponent' && block.rating.exponent === null;
  const boundRatio =
    ((1 - model.availableShare) / model.availableShare) *
    (guessed ? guessedShare[block.chemistry] : 1);
  return {
    capacityAh: model.capacityAh,
    rated: {
      capacityAh:
        block.capacityAh * shareAgainstRating(block.chemistry, temperatureC, block.ratedHours),
      hours: block.ratedHours,
    },
    boundRatio: lead ? boundRatio : 0,
    boundRatioSigma: lead ? Math.max(0.3, boundRatio) : 0.05,
    levellingPerS: Math.max(1e-5, model.levellingPerS),
    resistanceOhm: model.resistanceOhm / cells,
    polarisationRatio: polarisationRatio[traits.family],
    polarisationS: polarisationS[traits.family],
    kneeOhm: lead ? model.kneeOhm / cells : 0,
    kneeSigmaOhm: lead
      ? Math.max(model.kneeOhm, 0.3 * model.resistanceOhm) / cells
      : (0.02 * model.resistanceOhm) / cells,
    coldRatePerK: traits.resistanceColdRatePerK,
    coldRateSigma: 0.006,
    usualOpenCircuit: usualTable(monotoneCurve(traits.openCircuit)),
    openCircuitSigmaV: curveSigmaV[block.chemistry] * 2,
    openCircuitRoughnessV: curveSigmaV[block.chemistry] / 2,
    hysteresisV: traits.hysteresisV,
    heatCapacityJPerK: model.heatCapacityJPerK / cells,
    coolingPerS: 1 / (model.heatCapacityJPerK * model.heatResistanceKPerW),
    leadAcid: lead,
    chemistry: block.chemistry,
    cellGroups: cells,
  };
}
