import type { Block } from '../plan/schema/block.ts';
import { capacityShareAtAge, resistanceFactorAtAge } from './ageing.ts';
import type { BlockConditions, BlockModel } from './block-model.ts';
import { chemistryTraits } from './chemistry.ts';
import { defaultResistanceOhm } from './default-resistance.ts';
import { endHead } from './end-head.ts';
import { fitWells } from './fit-wells.ts';
import type { FittedWells } from './fit-wells.ts';
import { monotoneCurve } from './monotone-curve.ts';
import { ratedPoints } from './rating-points.ts';
import { buildFittedBlock } from './fitted-block.ts';
import { heatResistanceKPerW } from './heat.ts';
import { resistanceFactorAtTemperature, shareAgainstRating } from './temperature.ts';
import { sampleUniform } from './uniform-table.ts';
import type { UniformTable } from './uniform-table.ts';

/** A new block of normal capacity at 25 °C. */
export const newBlockConditions: BlockConditions = {
  temperatureC: 25,
  ageYears: 0,
  cyclesDone: 0,
  capacityPercent: 100,
  resistancePercent: 100,
};

/** The model of a block together with how well it meets the ratings it was made from. */
export interface BuiltBlock {
  readonly model: BlockModel;
  readonly wells: FittedWells;
}

/**
 * Turns a block as bought, in given conditions, into a model ready for simulation.
 *
 * Capacity at every rated point is scaled by temperature, age and the block's own share; wells are then fitted so that
 * the loaded voltage reaches each point's end voltage when the scaled capacity is out. Resistance is scaled by
 * temperature, age and the block's own share.
 *
 * @param conditions temperature -30 to 60 °C; percentages above 0
 */
export function buildBlock(block: Block, conditions: BlockConditions): BuiltBlock {
  if (block.fitted !== null) return buildFittedBlock(block, block.fitted, conditions);
  const traits = chemistryTraits[block.chemistry];
  const { temperatureC } = conditions;
  const ageShare = capacityShareAtAge(block.chemistry, conditions.ageYears, conditions.cyclesDone);
  const ownShare = (ageShare * conditions.capacityPercent) / 100;
  const resistanceOhm =
    (block.resistanceOhm ?? defaultResistanceOhm(block)) *
    resistanceFactorAtTemperature(block.chemistry, temperatureC) *
    resistanceFactorAtAge(block.chemistry, ageShare) *
    (conditions.resistancePercent / 100);
  const { electrical, wells } = fitWithKnee(block, resistanceOhm, ownShare, temperatureC);
  return {
    wells,
    model: {
      ...electrical,
      chemistry: block.chemistry,
      cellGroups: block.cellGroups,
      capacityAh: wells.capacityAh,
      availableShare: wells.availableShare,
      levellingPerS: wells.levellingPerH / 3600,
      temperatureC,
      resistanceColdRatePerK: traits.resistanceColdRatePerK,
      heatCapacityJPerK: traits.heatJPerAhK * block.capacityAh * block.cellGroups,
      heatResistanceKPerW: heatResistanceKPerW(block),
    },
  };
}

type Electrical = Pick<
  BlockModel,
  'openCircuit' | 'hysteresisV' | 'resistanceOhm' | 'kneeOhm' | 'polarisationOhm' | 'polarisationS'
>;

/** Knee resistances to try, as shares of the usual one. */
const kneeTrials = [1, 0.5, 0.25, 0];

/**
 * Fits the wells under the usual knee; where the ratings show less rate loss than that knee alone would cause, the knee
 * is reduced until they are met. A block rated with an exponent of 1 ends up with one well and hardly a knee.
 */
function fitWithKnee(
  block: Block,
  resistanceOhm: number,
  ownShare: number,
  temperatureC: number,
): { electrical: Electrical; wells: FittedWells } {
  const traits = chemistryTraits[block.chemistry];
  let electrical: Electrical | undefined;
  let wells: FittedWells | undefined;
  for (const trial of kneeTrials) {
    const tried: Electrical = {
      openCircuit: openCircuitTable(block.chemistry, block.cellGroups),
      hysteresisV: traits.hysteresisV * block.cellGroups,
      resistanceOhm,
      kneeOhm: resistanceOhm * traits.kneeShare * trial,
      polarisationOhm: resistanceOhm * traits.polarisation.share,
      polarisationS: traits.polarisation.timeS,
    };
    electrical = tried;
    wells = fitWells(
      ratedPoints(block).map((point) => {
        const capacityAh =
          point.capacityAh *
          ownShare *
          shareAgainstRating(block.chemistry, temperatureC, point.hours);
        return {
          hours: point.hours,
          capacityAh,
          weight: point.weight,
          endHead: endHead(tried, capacityAh / point.hours, point.hours * 3600, point.endVoltageV),
        };
      }),
    );
    if (wells.availableShare < 1 || Math.max(...wells.residuals.map(Math.abs)) < 0.02) break;
  }
  return { electrical: electrical!, wells: wells! };
}

/** `buildBlock` where only the model is wanted. */
export function buildBlockModel(
  block: Block,
  conditions: BlockConditions = newBlockConditions,
): BlockModel {
  return buildBlock(block, conditions).model;
}

const tableCount = 1001;
const cellTables = new Map<string, UniformTable>();

function openCircuitTable(chemistry: Block['chemistry'], cellGroups: number): UniformTable {
  const key = `${chemistry}-${cellGroups}`;
  let table = cellTables.get(key);
  if (table === undefined) {
    const cellV = monotoneCurve(chemistryTraits[chemistry].openCircuit);
    table = sampleUniform((charge) => cellGroups * cellV(charge), tableCount);
    cellTables.set(key, table);
  }
  return table;
}
