import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { normalQuantile } from '../../numerics/normal-quantile.ts';

/** A number for a text: the columns of a sample are seeded by their names, so that one more option changes none of them. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return hash | 0;
}

/**
 * One column of a Latin hypercube sample: `count` standard normal deviates, one from each of `count` equally likely
 * strata, in random order (McKay, Beckman & Conover, Technometrics 21 (1979) 239).
 *
 * @param name seeds the column together with `seed`: the same name and seed give the same column, whoever asks
 * @param count at least 1
 */
export function latinColumn(name: string, count: number, seed: number): Float64Array {
  const random = xoroshiro128plus(hashOf(name) ^ Math.imul(seed, 0x9e3779b1));
  const column = new Float64Array(count);
  for (let row = 0; row < count; row += 1) {
    const inStratum = Math.min(1 - 1e-9, Math.max(1e-9, uniformFloat64(random)));
    column[row] = normalQuantile((row + inStratum) / count);
  }
  for (let row = count - 1; row > 0; row -= 1) {
    const other = uniformInt(random, 0, row);
    const kept = column[row]!;
    column[row] = column[other]!;
    column[other] = kept;
  }
  return column;
}
