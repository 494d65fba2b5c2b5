import { simulate } from '#core/run/simulate.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { createRepeatedStudy } from '#core/study/study-again.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import type { PackModel } from '#core/pack/pack-model.ts';
import type { Stepping } from '#core/run/setup.ts';
import { blockDeck } from '../support/block-deck.ts';
import {
  steadyLoad,
  testModel,
  testPack,
  testSetup,
  testString,
  testUnit,
} from '../support/engine.ts';
import { findNgspice, runTransient } from '../support/ngspice.ts';
import { limitRow, rateRow, skippedRow, timeRow, type BenchRow } from './row.ts';
import { scipyMs } from './scipy.ts';
import { timed } from './timed.ts';

const eightHoursS = 8 * 3600;
const second: Stepping = { kind: 'fixed', stepS: 1 };
const adaptive: Stepping = { kind: 'adaptive', toleranceV: 0.01 };
const model = testModel({ capacityAh: 40 });

/** Two equal blocks in series: one class of units, the common case. */
const oneString = testPack(testString([testUnit(model, { count: 2, positions: [1, 2] })]));

/** Strings of blocks none of which equals another, so that nothing is simulated once for several. */
function unequalPack(strings: number, blocks: number): PackModel {
  return testPack(
    ...Array.from({ length: strings }, (_, string) =>
      testString(
        Array.from({ length: blocks }, (__, block) =>
          testUnit(testModel({ capacityAh: 40 + 0.1 * (block + blocks * string) }), {
            positions: [block + 1],
          }),
        ),
        { strings: [string + 1] },
      ),
    ),
  );
}

const run = (pack: PackModel, stepping: Stepping, powerW: number, longestS = eightHoursS) =>
  simulate(
    testSetup(pack, steadyLoad({ kind: 'power', powerW }), {
      harnessOhm: 0.01,
      cutoffV: 10,
      longestS,
      stepping,
      full: false,
    }),
  );

/** Speed of the engine on one core, with ngspice and SciPy on the same circuit and step where they are installed. */
export function benchEngine(): BenchRow[] {
  const single = timed(() => run(oneString, second, 60));
  const short = timed(() => run(oneString, second, 60, eightHoursS / 8));
  const wide = timed(() => run(unequalPack(2, 8), second, 240), 20);
  const four = timed(() => run(unequalPack(2, 4), second, 120), 20);
  const thirtyTwo = timed(() => run(unequalPack(2, 32), second, 960), 8);
  const plan = samplePlan('orchard-cart');
  return [
    rateRow('one string, 8 h at 1 s (28,800 steps)', single, 1000),
    ...references(single, short),
    rateRow(
      'the same in adaptive steps, within 1 mV',
      timed(() => run(oneString, adaptive, 60)),
    ),
    rateRow('two strings of eight unequal groups, 8 h at 1 s', wide, 150),
    rateRow(
      'the same in adaptive steps, within 1 mV',
      timed(() => run(unequalPack(2, 8), adaptive, 240), 20),
    ),
    limitRow(
      'growth exponent with blocks, 8 to 64',
      Math.log(thirtyTwo / four) / Math.log(8),
      '',
      1.1,
    ),
    limitRow(
      'growth exponent with steps, 3,600 to 28,800',
      Math.log(single / short) / Math.log(8),
      '',
      1.1,
    ),
    timeRow(
      'study of the sample plan: three options, all findings',
      timed(() => studyPlan(plan), 30),
    ),
    timeRow('study after an edit of one option', editMs(plan), undefined, 'after every edit'),
  ];
}

/** What other programs take for the run of one string. */
function references(single: number, short: number): BenchRow[] {
  const rows: BenchRow[] = [];
  if (findNgspice() === null) rows.push(skippedRow('ngspice on the same work', 'not installed'));
  else {
    const deck = [
      blockDeck('a', 'm', '0', model),
      blockDeck('b', 's', 'm', model),
      'Rk s p 0.002',
      'Rh p bus 0.01',
      'Bl bus 0 I=60/max(5,V(bus))',
    ].join('\n');
    const ms = timed(() => runTransient(deck, `1 ${eightHoursS} 0 1 uic`, ['v(bus)']), 3);
    const ratio = ms / single;
    rows.push({
      what: 'ngspice on the same circuit and step, its start included',
      result: `${ratio.toFixed(0)} x`,
      asked: { words: '>= 150 x', isMet: ratio >= 150 },
      note: `${ms.toFixed(0)} ms against ${single.toFixed(2)} ms`,
    });
  }
  const ms = scipyMs(model, 60, eightHoursS / 8);
  rows.push(
    ms === null
      ? skippedRow('SciPy on the same work', 'no Python with SciPy')
      : {
          what: 'SciPy (RK45) on the same equations and step, 1 h',
          result: `${(ms / short).toFixed(0)} x`,
          note: `${ms.toFixed(0)} ms against ${short.toFixed(2)} ms`,
        },
  );
  return rows;
}

/** Time of a study after another capacity has been typed for one option [ms]. */
function editMs(plan: Plan): number {
  const again = createRepeatedStudy();
  let capacityAh = 18;
  return timed(() => {
    capacityAh += 0.01;
    const edited = structuredClone(plan);
    edited.options[0]!.pack.block.capacityAh = capacityAh;
    again(edited);
  }, 30);
}
