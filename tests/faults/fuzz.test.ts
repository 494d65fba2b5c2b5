import { describe, expect, test } from 'vitest';
import { fuzzCase, fuzzKinds } from '../fuzz/kinds.ts';

/** The short form of `npm run fuzz`: as many seeds as the time allows, always the same ones first. */
const budgetMs = 2_000;
const fewest = 6;

describe('random plans, random values, spoilt files and spoilt logs', () => {
  test.each(fuzzKinds)(
    '%s give a result or a typed problem, never a number that is none',
    (kind) => {
      const counts = { worked: 0, refused: 0 };
      const end = performance.now() + budgetMs;
      let seed = 1;
      for (; seed <= fewest || (performance.now() < end && seed <= 2000); seed += 1) {
        try {
          counts[fuzzCase(kind, seed).kind] += 1;
        } catch (error) {
          throw new Error(`seed ${seed} of ${kind}`, { cause: error });
        }
      }
      console.log(
        `${kind}: seeds 1 to ${seed - 1}, ${counts.worked} worked, ${counts.refused} refused`,
      );
      expect(counts.refused === 0).toBe(kind === 'plans');
      expect(counts.worked).toBeGreaterThan(0);
    },
  );
});
