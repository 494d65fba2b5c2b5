import type { Block } from '../plan/schema/block.ts';
import { capacityShareAtAge, resistanceFactorAtAge } from './ageing.ts';
import type { BlockConditions, BlockModel } from './block-model.ts';
import { chemistryTraits } from './chemistry.ts';
import { defaultResistanceOhm } from './default-resistance.ts';
import type { FittedWells } from './fit-wells.ts';
import { buildFittedBlock } from './fitted-block.ts';
import { heatResistanceKPerW } from './heat.ts';
import { fitRatedPoints } from './rating/fit-rated-points.ts';
import { measuredBehaviour } from './rating/measured-behaviour.ts';
import { resistanceFactorAtTemperature } from './temperature.ts';

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
  const measured = measuredBehaviour(block);
  if (measured !== null) return buildFittedBlock(block, measured, conditions);
  const traits = chemistryTraits[block.chemistry];
  const { temperatureC } = conditions;
  const ageShare = capacityShareAtAge(block.chemistry, conditions.ageYears, conditions.cyclesDone);
  const ownShare = (ageShare * conditions.capacityPercent) / 100;
  const resistanceOhm =
    (block.resistanceOhm ?? defaultResistanceOhm(block)) *
    resistanceFactorAtTemperature(block.chemistry, temperatureC) *
    resistanceFactorAtAge(block.chemistry, ageShare) *
    (conditions.resistancePercent / 100);
  const { electrical, wells } = fitRatedPoints(block, resistanceOhm, ownShare, temperatureC);
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

/** `buildBlock` where only the model is wanted. */
export function buildBlockModel(
  block: Block,
  conditions: BlockConditions = newBlockConditions,
): BlockModel {
  return buildBlock(block, conditions).model;
}
