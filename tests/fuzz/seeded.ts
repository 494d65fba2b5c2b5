import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Random choices that a seed repeats exactly. */
export interface Seeded {
  /** Evenly in 0 to 1. */
  share(): number;
  /** A whole number from 0 to `count - 1`. */
  below(count: number): number;
  pick<T>(of: readonly T[]): T;
  chance(share: number): boolean;
}

export function seeded(seed: number): Seeded {
  const generator = xoroshiro128plus(seed);
  const share = () => uniformFloat64(generator);
  const below = (count: number) => uniformInt(generator, 0, count - 1);
  return {
    share,
    below,
    pick: (of) => of[below(of.length)]!,
    chance: (limit) => share() < limit,
  };
}
