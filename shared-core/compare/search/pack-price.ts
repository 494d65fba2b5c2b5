import {
  knowsPricesIn,
  typicalBlockPrice,
  typicalChargerPrice,
} from '../../library/typical-price.ts';
import type { Charger } from '../../plan/schema/charger.ts';
import type { Candidate } from './candidate.ts';

export interface RoughPrice {
  /** Null where nothing is known of it. */
  readonly price: number | null;
  /** True where a part of it is what such parts usually cost. */
  readonly isTypical: boolean;
}

/** Price of the blocks: as stated, else what such blocks usually cost. */
export function blocksPrice(candidate: Candidate, currency: string): RoughPrice {
  const { block, seriesCount, parallelCount } = candidate;
  const count = seriesCount * parallelCount;
  if (block.price !== null) return { price: count * block.price, isTypical: false };
  return knowsPricesIn(currency)
    ? { price: count * typicalBlockPrice(block).typical, isTypical: true }
    : { price: null, isTypical: false };
}

/** Price of blocks and charger together. */
export function priceWithCharger(
  blocks: RoughPrice,
  charger: Charger | null,
  currency: string,
): RoughPrice {
  if (charger === null || blocks.price === null) return blocks;
  if (charger.price !== null)
    return { price: blocks.price + charger.price, isTypical: blocks.isTypical };
  return knowsPricesIn(currency)
    ? { price: blocks.price + typicalChargerPrice(charger).typical, isTypical: true }
    : { price: null, isTypical: false };
}
