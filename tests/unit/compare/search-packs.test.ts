import { expect, test } from 'vitest';
import { rejectRules, type SearchWishes } from '#core/compare/search/candidate.ts';
import { searchPacks } from '#core/compare/search/search-packs.ts';
import { blockParts, libraryBlock } from '#core/library/index.ts';
import { newOption, newPack } from '#core/plan/defaults.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { runOuting } from '#core/run/run-outing.ts';

const plan = samplePlan('orchard-cart');
const wishes: SearchWishes = {
  blocks: ['agm-12v-12ah', 'agm-12v-18ah', 'agm-6v-12ah', 'lfp-24v-20ah', 'nmc-24v-10ah'].map(
    libraryBlock,
  ),
  chargers: [],
  chemistries: ['agm', 'lfp', 'nmc'],
  leastVoltageV: 22,
  mostVoltageV: 28,
  mostSeries: 4,
  mostParallel: 3,
  bay: null,
  massLimitKg: 18,
  priceLimit: null,
  goalMin: 90,
  mostRuns: 500,
};

test('the search finds the packs that simulating every candidate finds', () => {
  // [R] every candidate run with the full simulation, wishes applied afterwards; nothing is screened.
  const expected: string[] = [];
  for (const block of wishes.blocks)
    for (let series = 1; series <= 4; series += 1)
      for (let parallel = 1; parallel <= 3; parallel += 1) {
        const volts =
          series *
          block.cellGroups *
          (block.chemistry === 'lfp' ? 3.2 : block.chemistry === 'nmc' ? 3.65 : 2);
        if (volts < 22 || volts > 28 || series * parallel * block.massKg! > 18) continue;
        const pack = { ...newPack(block, series), parallelCount: parallel };
        const run = runOuting(newOption([], pack), plan.machine, plan.outings[0]!);
        if (run.runTimeMin >= 90) expected.push(`${block.name} ${series} ${parallel}`);
      }
  const { found } = searchPacks(plan, wishes);
  const names = found.map(
    ({ option: { pack } }) => `${pack.block.name} ${pack.seriesCount} ${pack.parallelCount}`,
  );
  expect(names.toSorted()).toEqual(expected.toSorted());
  expect(expected.length).toBeGreaterThan(2);
});

test('every candidate is found, rejected by one rule, or not run', () => {
  const blocks = blockParts.map(({ value }) => value);
  const many = { ...wishes, blocks, mostSeries: 16, mostParallel: 12, mostRuns: 40 };
  const result = searchPacks(plan, many);
  const fellOut = rejectRules.reduce((sum, rule) => sum + result.rejected[rule], 0);
  expect(result.candidateCount).toBe(blocks.length * 16 * 12);
  expect(fellOut + result.notRunCount + result.found.length).toBe(result.candidateCount);
});

test('bare lithium groups without a management system are never proposed', () => {
  const groups = { ...wishes, blocks: [libraryBlock('lfp-cell-20ah')], mostSeries: 8 };
  const result = searchPacks(plan, groups);
  expect(result.found).toEqual([]);
  expect(result.rejected['no-bms']).toBe(result.candidateCount);
});
