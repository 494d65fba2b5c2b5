import { describe, expect, test } from 'vitest';
import { newConverter } from '#core/plan/defaults.ts';
import type { Converter } from '#core/plan/schema/accessory.ts';
import { legSource } from '#core/run/leg-source.ts';
import type { LoadSource } from '#core/run/load-source.ts';
import { simulate } from '#core/run/simulate.ts';
import type { RunResult } from '#core/run/result.ts';
import { blockDeck } from '../support/block-deck.ts';
import { checkAgainst } from '../support/check-against.ts';
import {
  steadyLoad,
  testModel,
  testPack,
  testSetup,
  testString,
  testUnit,
} from '../support/engine.ts';
import { columnAt, findNgspice, runTransient } from '../support/ngspice.ts';

const ngspice = findNgspice();

/** Largest distance between our bus voltage and ngspice's over the run [V], away from switching edges. */
function largestDifferenceV(
  run: RunResult,
  rows: number[][],
  edgesS: readonly number[] = [],
): number {
  let worst = 0;
  run.series.timeS.forEach((timeS, row) => {
    if (timeS === 0 || edgesS.some((edge) => Math.abs(timeS - edge) < 0.2)) return;
    worst = Math.max(worst, Math.abs(run.series.busVoltageV[row]! - columnAt(rows, 1, timeS)));
  });
  return worst;
}

const report = (quantity: string, ours: number) =>
  checkAgainst({
    chapter: 'Circuit',
    quantity: `Largest difference of bus voltage over a run: ${quantity}`,
    unit: 'V',
    source: 'ngspice (circuit simulator), same equations as an independent deck',
    class: 'tool',
    reference: 0,
    ours,
    within: { absolute: 1e-3 },
  });

const stepping = { kind: 'adaptive', toleranceV: 0.005 } as const;
const fine = (untilS: number) => `0.5 ${untilS} 0 0.5 uic`;
const options = '.options reltol=1e-6 abstol=1e-9 vntol=1e-8';

describe.skipIf(ngspice === null)('the pack circuit against ngspice over a whole discharge', () => {
  const strong = testModel();
  const weak = testModel({ capacityAh: 8.76, resistanceOhm: 0.034, levellingPerS: 0.3 / 3600 });

  test('two unequal strings with a constant-power load agree within 1 mV to the cutoff', () => {
    const run = simulate(
      testSetup(
        testPack(
          testString([testUnit(strong, { count: 2, positions: [1, 2] })]),
          testString([testUnit(strong), testUnit(weak, { positions: [2], startCharge: 0.95 })], {
            strings: [2],
          }),
        ),
        steadyLoad({ kind: 'power', powerW: 180 }),
        { harnessOhm: 0.01, cutoffV: 20.5, stepping },
      ),
    );
    const untilS = run.runTimeMin * 60;
    const deck = [
      options,
      blockDeck('a', 'm1', '0', strong),
      blockDeck('b', 's1', 'm1', strong),
      blockDeck('c', 'm2', '0', strong),
      blockDeck('d', 's2', 'm2', weak, 0.95),
      'Rk1 s1 p 0.002',
      'Rk2 s2 p 0.002',
      'Rh p bus 0.01',
      'Bl bus 0 I=180/max(5,V(bus))',
    ].join('\n');
    const rows = runTransient(deck, fine(untilS), ['v(bus)']);
    expect(run.endedBy).toBe('controller-cutoff');
    expect(rows.at(-1)![0]).toBeCloseTo(untilS, 0);
    report('two unequal strings of two, 180 W', largestDifferenceV(run, rows));
  });

  test('a string with one weak block agrees, the weak block included, until it is reversed', () => {
    const run = simulate(
      testSetup(
        testPack(testString([testUnit(strong), testUnit(weak, { positions: [2] })])),
        steadyLoad({ kind: 'current', currentA: 6 }),
        { cutoffV: 14, stepping },
      ),
    );
    const untilS = run.runTimeMin * 60;
    const deck = [
      options,
      blockDeck('a', 'm', '0', strong),
      blockDeck('b', 's', 'm', weak),
      'Rk s bus 0.002',
      'Il bus 0 6',
    ].join('\n');
    // The reversed block falls by volts in seconds: ngspice needs short steps to follow.
    const rows = runTransient(deck, `0.01 ${untilS} 0 0.01 uic`, ['v(bus)', 'v(s)-v(m)']);
    report('string with a block 27 % weaker, 6 A', largestDifferenceV(run, rows));
    const block = run.series.blocks.find((each) => each.positions.includes(2))!;
    const end = run.series.timeS.length - 1;
    expect(Math.abs(block.voltageV[end]! - columnAt(rows, 2, untilS))).toBeLessThan(2e-3);
  });

  test('two strings joined at different charge circulate and level out as ngspice says', () => {
    const model = testModel({ polarisationOhm: 0.01 });
    const run = simulate(
      testSetup(
        testPack(
          testString([testUnit(model, { startCharge: 1 })]),
          testString([testUnit(model, { startCharge: 0.4 })], { strings: [2] }),
        ),
        steadyLoad({ kind: 'current', currentA: 0 }),
        { longestS: 7200, stepping: { kind: 'adaptive', toleranceV: 0.002 } },
      ),
    );
    const deck = [
      options,
      blockDeck('a', 's1', '0', model),
      blockDeck('b', 's2', '0', model, 0.4),
      'Rk1 s1 bus 0.002',
      'Vm s2 s3 0',
      'Rk2 s3 bus 0.002',
      'Rl bus 0 1e9',
    ].join('\n');
    const rows = runTransient(deck, '0.5 7200 0 0.5 uic', ['v(bus)', 'i(vm)']);
    report('two strings joined at 100 and 40 % charge, no load', largestDifferenceV(run, rows));
    const middle = run.series.timeS.findIndex((timeS) => timeS > 600);
    const second = run.series.strings[1]!.currentA[middle]!;
    expect(Math.abs(second - columnAt(rows, 2, run.series.timeS[middle]!))).toBeLessThan(0.02);
  });

  test('work, rest and work again under a resistive load agree, recovery included', () => {
    const legs = [
      {
        id: 'work',
        name: 'work',
        durationMin: 20,
        load: { kind: 'resistance', resistanceOhm: 1.5 },
      },
      { id: 'rest', name: 'rest', durationMin: 10, load: null },
    ] as const;
    const run = simulate(
      testSetup(testPack(testString([testUnit(strong)])), legSource(legs), {
        longestS: 4800,
        stepping,
      }),
    );
    const edges = [0, 1200, 1800, 3000, 3600, 4800];
    const gate = edges
      .slice(1, -1)
      .map(
        (edge, index) =>
          `${edge - 0.01},${index % 2 === 0 ? 1 : 0},${edge + 0.01},${index % 2 === 0 ? 0 : 1}`,
      );
    const deck = [
      options,
      blockDeck('a', 's', '0', strong),
      'Rk s bus 0.002',
      `Bg gate 0 V=pwl(time,0,1,${gate.join(',')},1e6,1)`,
      'Rg gate 0 1',
      'Bl bus 0 I=V(gate)*V(bus)/1.5',
    ].join('\n');
    const rows = runTransient(deck, '0.5 4800 0 0.5 uic', ['v(bus)']);
    report('20 min through 1.5 Ω, 10 min rest, repeated', largestDifferenceV(run, rows, edges));
  });

  test('after a cutoff and ten minutes of rest the machine runs on as many minutes as ngspice says', () => {
    const model = testModel({ availableShare: 0.4 });
    const cutoffV = 10.8;
    const run = simulate(
      testSetup(
        testPack(testString([testUnit(model)])),
        steadyLoad({ kind: 'current', currentA: 8 }),
        { cutoffV, restartV: 11.5, restAfterS: 600, stepping },
      ),
    );
    const cutS = run.runTimeMin * 60;
    const againS = cutS + 600;
    const deck = [
      options,
      blockDeck('a', 's', '0', model),
      'Rk s bus 0.002',
      `Bg gate 0 V=pwl(time,0,1,${cutS},1,${cutS + 0.01},0,${againS},0,${againS + 0.01},1,1e6,1)`,
      'Rg gate 0 1',
      'Bl bus 0 I=8*V(gate)',
    ].join('\n');
    const rows = runTransient(deck, `0.25 ${againS + 1800} 0 0.25 uic`, ['v(bus)']);
    const second = rows.find(([timeS, volts]) => timeS! > againS + 1 && volts! < cutoffV)!;
    const source = 'ngspice (circuit simulator), same equations as an independent deck';
    const { timeS, busVoltageV } = run.series;
    // The deck's rows stand a quarter of a second apart: stay clear of the switching.
    const before = timeS.findLastIndex((time) => time < cutS - 1);
    const common = { chapter: 'Circuit', source, class: 'tool' } as const;
    checkAgainst({
      ...common,
      quantity: 'Bus voltage at 8 A just before our run reaches its 10.8 V cutoff',
      unit: 'V',
      reference: columnAt(rows, 1, timeS[before]!),
      ours: busVoltageV[before]!,
      within: { absolute: 1e-3 },
    });
    checkAgainst({
      ...common,
      quantity: 'Run on after ten minutes of rest, to 10.8 V at 8 A',
      unit: 'min',
      reference: (second[0]! - againS) / 60,
      ours: run.afterRestMin!,
      within: { absolute: 0.02 },
    });
  });

  test('a converter that drops out below its input loads the pack as ngspice says, before and after', () => {
    const model = testModel({ openCircuit: testModel().openCircuit });
    // A 10 Ω load behind a converter to 11.5 V that needs 12.1 V at its input: 95 % duty, no resistance of its own.
    const converter: Converter = {
      ...newConverter(),
      outputVoltageV: 11.5,
      maximumDutyPercent: 95,
      dropoutResistanceOhm: 0,
      minimumInputV: null,
      loss: { kind: 'coefficients', idleLossW: 0.5, dropV: 0.1, lossResistanceOhm: 0.04 },
    };
    const run = simulate(
      testSetup(
        testPack(testString([testUnit(model)])),
        steadyLoad({ kind: 'current', currentA: 3 }),
        {
          converter,
          converterDemand: { currentA: 0, powerW: 0, conductanceS: 0.1 },
          cutoffV: 11.2,
          stepping,
        },
      ),
    );
    const dropout = run.events.find(({ kind }) => kind === 'converter-brown-out')!;
    expect(dropout.busVoltageV).toBeLessThan(11.5 / 0.95);
    const untilS = run.runTimeMin * 60;
    const deck = [
      options,
      blockDeck('a', 's', '0', model),
      'Rk s bus 0.002',
      'Bo out 0 V=min(11.5,0.95*V(bus))',
      'Ro out 0 10',
      'Bl bus 0 I=3+(V(out)*V(out)/10+0.5+0.1*V(out)/10+0.04*V(out)*V(out)/100)/max(5,V(bus))',
    ].join('\n');
    const rows = runTransient(deck, fine(untilS), ['v(bus)']);
    report('3 A and a converter that drops out on the way', largestDifferenceV(run, rows));
  });

  test('a motor at fixed duty and a converter in regulation load the pack as ngspice says', () => {
    // d^2/R as a conductance, d Ke w/R as a current fed back; the converter is a constant power.
    const motor: LoadSource = {
      ...steadyLoad({ kind: 'resistance', resistanceOhm: 1 }),
      terms(_timeS, _busV, into) {
        into.currentA = -60;
        into.powerW = 0;
        into.conductanceS = 3;
      },
    };
    const run = simulate(
      testSetup(testPack(testString([testUnit(strong, { count: 2, positions: [1, 2] })])), motor, {
        harnessOhm: 0.008,
        packDemand: { currentA: 0.05, powerW: 40, conductanceS: 0 },
        cutoffV: 21,
        stepping,
      }),
    );
    const deck = [
      options,
      blockDeck('a', 'm', '0', strong),
      blockDeck('b', 's', 'm', strong),
      'Rk s p 0.002',
      'Rh p bus 0.008',
      'Bl bus 0 I=3*V(bus)-60+40/max(5,V(bus))+0.05',
    ].join('\n');
    const rows = runTransient(deck, fine(run.runTimeMin * 60), ['v(bus)']);
    report('motor at fixed duty and 40 W converter', largestDifferenceV(run, rows));
  });
});
