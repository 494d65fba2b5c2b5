import type { Block } from '../plan/schema/block.ts';
import { chemistryTraits } from './chemistry.ts';

/** A square block loses about this much heat to still air [W/K per litre^(2/3)]. Common practice, no source. */
const lossWPerK = 0.35;

/** Energy in a litre of battery where the size of the block is not known [Wh]. Common practice, no source. */
const whPerLitre = { lead: 80, lithium: 200 } as const;

/** Resistance of a block against losing heat to the air [K/W], from its size or, unknown, from its energy. */
export function heatResistanceKPerW(block: Block): number {
  return 1 / (lossWPerK * blockLitres(block) ** (2 / 3));
}

function blockLitres(block: Block): number {
  const { lengthMm, widthMm, heightMm } = block;
  if (lengthMm !== null && widthMm !== null && heightMm !== null)
    return (lengthMm * widthMm * heightMm) / 1e6;
  const { nominalV, family } = chemistryTraits[block.chemistry];
  return (block.capacityAh * block.cellGroups * nominalV) / whPerLitre[family];
}
