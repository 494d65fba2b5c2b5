import type { Pack } from '../plan/schema/option.ts';

/** Adds a figure over all blocks of a pack; null when one block does not state it. */
function sumOverBlocks(pack: Pack, read: (block: Pack['block']) => number | null): number | null {
  let sum = 0;
  for (let string = 1; string <= pack.parallelCount; string += 1) {
    for (let position = 1; position <= pack.seriesCount; position += 1) {
      const difference = pack.differences.find(
        (each) => each.string === string && each.position === position,
      );
      const value = read(difference?.replacement ?? pack.block);
      if (value === null) return null;
      sum += value;
    }
  }
  return sum;
}

/** Mass of all blocks of a pack [kg]; null when the mass of one is not known. */
export function packMassKg(pack: Pack): number | null {
  return sumOverBlocks(pack, (block) => block.massKg);
}

/** Price of all blocks of a pack; null when the price of one is not known. */
export function packPrice(pack: Pack): number | null {
  return sumOverBlocks(pack, (block) => block.price);
}
