import { searchPacks } from '#core/compare/search/search-packs.ts';
import { candidateCount } from '#core/compare/search/candidate.ts';
import { usualWishes } from '#core/compare/search/usual-wishes.ts';
import { planSensitivity } from '#core/compare/sensitivity/sensitivity.ts';
import { spreadPlan } from '#core/compare/spread/spread-plan.ts';
import { libraryBlock } from '#core/library/index.ts';
import { newOption, newPack, newPlan } from '#core/plan/defaults.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { timeRow, type BenchRow } from './row.ts';
import { timed } from './timed.ts';

/** Two blocks in series on a steady current, nothing else connected. */
function steadyPlan(): Plan {
  const plan = newPlan();
  const [outing] = plan.outings;
  return {
    ...plan,
    options: [newOption([], newPack(libraryBlock('agm-12v-18ah'), 2))],
    outings: [
      {
        ...outing!,
        legs: [{ ...outing!.legs[0]!, load: { kind: 'current', currentA: 6 } }],
        restAfterMin: 0,
      },
    ],
  };
}

/** Spread, sensitivity and search of the sample plan, on one core. */
export function benchCompare(): BenchRow[] {
  const plan = samplePlan('orchard-cart');
  const one = { ...plan, options: plan.options.slice(0, 1) };
  const driven = samplePlan('campsite-tug');
  const oneDriven = { ...driven, options: driven.options.slice(0, 1) };
  const steady = steadyPlan();
  const search = { ...usualWishes(plan), mostParallel: 12 };
  return [
    timeRow(
      'spread of 500 runs of the sample option',
      timed(() => spreadPlan(one, { caseCount: 500, seed: 1 }), 5),
      1000,
    ),
    timeRow(
      '10,000 constant-load runs of one string, each with its own inputs',
      timed(() => spreadPlan(steady, { caseCount: 10_000, seed: 1 }), 1),
      6000,
    ),
    timeRow(
      `search over ${candidateCount(search)} candidates`,
      timed(() => searchPacks(plan, search), 3),
      5000,
    ),
    timeRow(
      'spread of 100 driven runs (hills, starts, two motors)',
      timed(() => spreadPlan(oneDriven, { caseCount: 100, seed: 1 }), 2),
    ),
    timeRow(
      'sensitivity of the sample plan, three options',
      timed(() => planSensitivity(plan), 5),
    ),
  ];
}
