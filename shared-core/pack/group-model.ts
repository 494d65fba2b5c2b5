import type { BlockModel } from '../battery/block-model.ts';

/** One cell group of a block: its share of voltage, resistance and heat, scaled by how it differs from its neighbours. */
export function groupModel(
  block: BlockModel,
  capacityShare: number,
  resistanceShare: number,
): BlockModel {
  const { cellGroups } = block;
  const ohm = resistanceShare / cellGroups;
  return {
    ...block,
    cellGroups: 1,
    capacityAh: block.capacityAh * capacityShare,
    resistanceOhm: block.resistanceOhm * ohm,
    kneeOhm: block.kneeOhm * ohm,
    polarisationOhm: block.polarisationOhm * ohm,
    hysteresisV: block.hysteresisV / cellGroups,
    openCircuit: { values: block.openCircuit.values.map((voltageV) => voltageV / cellGroups) },
    heatCapacityJPerK: block.heatCapacityJPerK / cellGroups,
    heatResistanceKPerW: block.heatResistanceKPerW * cellGroups,
  };
}
