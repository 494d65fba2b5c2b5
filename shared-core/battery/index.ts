export { buildBlock, buildBlockModel, newBlockConditions } from './build-block-model.ts';
export type { BuiltBlock } from './build-block-model.ts';
export type { BlockConditions, BlockModel } from './block-model.ts';
export { chemistryTraits } from './chemistry.ts';
export type { ChemistryTraits } from './chemistry.ts';
export { defaultResistanceOhm } from './default-resistance.ts';
export { loadedVoltageV, endHead } from './end-head.ts';
export { readUniform } from './uniform-table.ts';
