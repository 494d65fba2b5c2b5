import { simulate } from '#core/run/simulate.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
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
import type { BenchRow } from './row.ts';
import { timed } from './timed.ts';

const eightHoursS = 8 * 3600;
const second: Stepping = { kind: 'fixed', stepS: 1 };
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

/** Speed of the engine on one core, with ngspice on the same circuit and step where it is installed. */
export function benchEngine(): BenchRow[] {
  const rows: BenchRow[] = [];
  const single = timed(() => run(oneString, second, 60));
  rows.push({
    what: 'one string, 8 h at 1 s (28,800 steps)',
    ms: single,
    note: `${(1000 / single).toFixed(0)} runs/s`,
  });
  const adaptive = timed(() => run(oneString, { kind: 'adaptive', toleranceV: 0.01 }, 60));
  rows.push({
    what: 'the same, adaptive steps (within 1 mV)',
    ms: adaptive,
    note: `${(1000 / adaptive).toFixed(0)} runs/s`,
  });
  if (findNgspice() !== null) {
    const deck = [
      blockDeck('a', 'm', '0', model),
      blockDeck('b', 's', 'm', model),
      'Rk s p 0.002',
      'Rh p bus 0.01',
      'Bl bus 0 I=60/max(5,V(bus))',
    ].join('\n');
    const spice = timed(() => runTransient(deck, `1 ${eightHoursS} 0 1 uic`, ['v(bus)']), 3);
    rows.push({
      what: 'ngspice, the same circuit and step',
      ms: spice,
      note: `ratio ${(spice / single).toFixed(0)}`,
    });
  }
  const wideShort = unequalPack(2, 4);
  const wideUsual = unequalPack(2, 8);
  const wideLong = unequalPack(2, 32);
  const wide = timed(() => run(wideUsual, second, 240), 20);
  rows.push({
    what: 'two strings of eight unequal groups, 8 h at 1 s',
    ms: wide,
    note: `${(1000 / wide).toFixed(0)} runs/s`,
  });
  const wideAdaptive = timed(() => run(wideUsual, { kind: 'adaptive', toleranceV: 0.01 }, 240), 20);
  rows.push({
    what: 'the same, adaptive steps (within 1 mV)',
    ms: wideAdaptive,
    note: `${(1000 / wideAdaptive).toFixed(0)} runs/s`,
  });
  const four = timed(() => run(wideShort, second, 120), 20);
  const thirtyTwo = timed(() => run(wideLong, second, 960), 8);
  rows.push({
    what: 'growth with the number of blocks (8 to 64)',
    ms: thirtyTwo,
    note: `exponent ${(Math.log(thirtyTwo / four) / Math.log(8)).toFixed(2)}`,
  });
  const short = timed(() => run(oneString, second, 60, eightHoursS / 8));
  rows.push({
    what: 'growth with the number of steps (3,600 to 28,800)',
    ms: single,
    note: `exponent ${(Math.log(single / short) / Math.log(8)).toFixed(2)}`,
  });
  const plan = samplePlan('orchard-cart');
  const study = timed(() => studyPlan(plan), 30);
  rows.push({
    what: 'study of the sample plan: three options, all findings',
    ms: study,
    note: 'after every edit',
  });
  return rows;
}
