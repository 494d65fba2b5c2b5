import { expect, test } from 'vitest';
import { newPlan } from '#core/plan/defaults.ts';
import { freshId, identifierFrom } from '#core/plan/fresh-id.ts';
import { readPlan } from '#core/plan/read-plan.ts';
import { isSampleName, sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { trimDifferences } from '#core/plan/trim-differences.ts';
import { writePlan } from '#core/plan/write-plan.ts';

test('the samples are the orchard cart, the campsite tug and the market scooter', () => {
  expect(sampleNames).toEqual(['orchard-cart', 'campsite-tug', 'market-scooter']);
  expect(isSampleName('toString')).toBe(false);
});

test.each(sampleNames)(
  'the sample %s is read back as it was written, and says that it is invented',
  (name) => {
    const plan = samplePlan(name);
    expect(readPlan(writePlan(plan))).toEqual({ ok: true, plan, leftOut: [] });
    expect(plan.invented).toBe(true);
  },
);

test('a new plan is a plan', () => {
  const plan = newPlan();
  expect(readPlan(writePlan(plan))).toEqual({ ok: true, plan, leftOut: [] });
});

test('the order in which keys were set does not change the bytes', () => {
  const plan = samplePlan('orchard-cart');
  const turned = Object.fromEntries(Object.entries(plan).toReversed()) as typeof plan;
  expect(writePlan(turned)).toBe(writePlan(plan));
  expect(writePlan(plan).endsWith('}\n')).toBe(true);
});

test('the orchard cart offers the everyday decision', () => {
  const packs = samplePlan('orchard-cart').options.map(({ pack }) => [
    pack.block.chemistry,
    pack.block.capacityAh,
    pack.seriesCount,
    pack.parallelCount,
  ]);
  expect(packs).toEqual([
    ['agm', 18, 2, 1],
    ['lfp', 20, 1, 1],
    ['agm', 12, 2, 2],
  ]);
});

test('two samples of the same name share nothing', () => {
  const first = samplePlan('orchard-cart');
  first.options[0]!.pack.block.capacityAh = 1;
  first.options[0]!.charger!.chemistries.push('nmc');
  expect(samplePlan('orchard-cart').options[0]!.pack.block.capacityAh).toBe(18);
  expect(samplePlan('orchard-cart').options[0]!.charger!.chemistries).not.toContain('nmc');
});

test('fresh identifiers count on from those taken', () => {
  expect(freshId('option', [])).toBe('option');
  expect(freshId('option', ['option', 'option-2'])).toBe('option-3');
  expect(identifierFrom('Größere Säcke / 24 V')).toBe('grossere-sacke-24-v');
  expect(identifierFrom('€€')).toBe('item');
});

test('a smaller pack drops the differences of blocks it no longer has', () => {
  const { pack } = samplePlan('market-scooter').options[0]!;
  expect(
    trimDifferences({ ...pack, seriesCount: 1 }).differences.map((entry) => entry.position),
  ).toEqual([1]);
  expect(trimDifferences(pack)).toEqual(pack);
});
