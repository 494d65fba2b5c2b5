import { expect, test } from 'vitest';
import { samplePlan } from '#core/plan/samples/index.ts';
import { shareEqual } from '#core/plan/share-equal.ts';

test('a copy that is equal throughout gives the earlier value itself', () => {
  const plan = samplePlan('orchard-cart');
  expect(shareEqual(plan, structuredClone(plan))).toBe(plan);
});

test('after an edit only what lies on its path is new, and the result equals the edited plan', () => {
  const plan = samplePlan('orchard-cart');
  const edited = structuredClone(plan);
  edited.options[1]!.pack.block.capacityAh += 1;
  const shared = shareEqual(plan, edited);
  expect(shared).toEqual(edited);
  expect(shared.machine).toBe(plan.machine);
  expect(shared.options[0]).toBe(plan.options[0]);
  expect(shared.options[1]).not.toBe(plan.options[1]);
  expect(shared.options[1]!.charger).toBe(plan.options[1]!.charger);
});

test('entries of a list are known again by their identifier when they have moved', () => {
  const plan = samplePlan('orchard-cart');
  const moved = structuredClone(plan);
  moved.options.reverse();
  const shared = shareEqual(plan, moved);
  expect(shared).toEqual(moved);
  expect(shared.options).not.toBe(plan.options);
  expect(shared.options[0]).toBe(plan.options.at(-1));
});

test('a key more, a key less, a shorter list and another kind of value are changes', () => {
  expect(shareEqual({ a: 1 }, { a: 1, b: 2 })).toEqual({ a: 1, b: 2 });
  expect(shareEqual({ a: 1, b: 2 }, { a: 1 })).toEqual({ a: 1 });
  expect(shareEqual({ a: 1, b: undefined }, { a: 1, c: 2 })).toEqual({ a: 1, c: 2 });
  expect(shareEqual([1, 2, 3], [1, 2])).toEqual([1, 2]);
  expect(shareEqual({ a: [1] }, { a: { 0: 1 } })).toEqual({ a: { 0: 1 } });
  expect(shareEqual({ a: null }, { a: { b: null } })).toEqual({ a: { b: null } });
});
