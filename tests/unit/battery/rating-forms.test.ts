import { describe, expect, it } from 'vitest';
import { ratingOfKind } from '#core/battery/rating-forms.ts';
import { buildBlockModel } from '#core/battery/build-block-model.ts';
import { checkPlan } from '#core/plan/read-plan.ts';
import { newPlan } from '#core/plan/defaults.ts';
import type { Block, Rating } from '#core/plan/schema/block.ts';

const plan = newPlan();
const block: Block = {
  ...structuredClone(plan.options[0]!.pack.block),
  capacityAh: 18,
  ratedHours: 20,
  rating: { kind: 'exponent', exponent: 1.2 },
};

describe('a rating said in another form', () => {
  it('turns an exponent into the points it implies', () => {
    const rating = ratingOfKind(block, 'points');
    if (rating.kind !== 'points') throw new Error(rating.kind);
    expect(rating.points.map(({ hours }) => hours)).toEqual([20, 10, 5, 1]);
    // [R] by Peukert's law I^k t = const by hand: C(t) = 18 A·h * (t / 20 h)^(1 - 1/1.2).
    expect(rating.points[0]?.capacityAh).toBe(18);
    expect(rating.points[3]?.capacityAh).toBeCloseTo(18 * 20 ** (-1 / 6), 1);
  });

  it('keeps a rating that is of that kind already', () => {
    expect(ratingOfKind(block, 'exponent')).toBe(block.rating);
  });

  it.each(['exponent', 'points', 'curves'] as const)(
    'makes, from any form, %s that the plan takes and the model can be built on',
    (kind) => {
      const forms: Rating['kind'][] = ['exponent', 'points', 'curves'];
      for (const from of forms) {
        const before = { ...block, rating: ratingOfKind(block, from) };
        const after = { ...before, rating: ratingOfKind(before, kind) };
        const tried = structuredClone(plan);
        tried.options[0]!.pack.block = after;
        expect(checkPlan(tried, 'en').ok).toBe(true);
        expect(buildBlockModel(after).capacityAh).toBeGreaterThan(0);
      }
    },
  );
});
