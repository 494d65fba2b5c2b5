import { describe, expect, test } from 'vitest';
import { samplePlan } from '#core/plan/samples/index.ts';
import { legSource } from '#core/run/leg-source.ts';
import { limitedSource } from '#core/run/limited-source.ts';
import { runOuting } from '#core/run/run-outing.ts';
import { simulate } from '#core/run/simulate.ts';
import { testModel, testPack, testSetup, testString, testUnit } from '../../support/engine.ts';

const pack = testPack(testString([testUnit(testModel(), { count: 2, positions: [1, 2] })]));
const leg = (load: { kind: 'power'; powerW: number } | { kind: 'current'; currentA: number }) => [
  { durationMin: 600, load },
];
const run = (source: ReturnType<typeof legSource>) =>
  simulate(testSetup(pack, source, { cutoffV: 21 }));

describe('plain legs behind a battery current limit', () => {
  test('a current above the limit runs at the limit, and an event says so with the limit', () => {
    const limited = run(limitedSource(legSource(leg({ kind: 'current', currentA: 12 })), 8));
    const steady = run(legSource(leg({ kind: 'current', currentA: 8 })));
    expect(limited.peakCurrentA).toBe(8);
    expect(limited.runTimeMin).toBeCloseTo(steady.runTimeMin, 6);
    expect(limited.events[0]).toMatchObject({ kind: 'controller-limit', timeMin: 0, value: 8 });
    expect(steady.events.map(({ kind }) => kind)).not.toContain('controller-limit');
  });

  test('a power meets the limit on the way, as the bus falls, and stays at it without jumping', () => {
    // 190 W reach 8 A where the bus stands at 23.75 V.
    const limited = run(limitedSource(legSource(leg({ kind: 'power', powerW: 190 })), 8));
    const met = limited.events.find(({ kind }) => kind === 'controller-limit')!;
    expect(met.timeMin).toBeGreaterThan(1);
    expect(met.busVoltageV).toBeCloseTo(190 / 8, 1);
    expect(limited.peakCurrentA).toBeLessThan(8.02);
    const { packCurrentA, timeS } = limited.series;
    const after = packCurrentA.filter((_, row) => timeS[row]! > met.timeMin * 60 + 5);
    expect(Math.min(...after)).toBeGreaterThan(7.98);
  });

  test("an outing's plain legs never draw more through the motor than the controller of the option allows", () => {
    const plan = samplePlan('orchard-cart');
    const option = plan.options[0]!;
    const outing = {
      ...plan.outings[0]!,
      legs: [
        {
          id: 'pull',
          name: 'pull',
          durationMin: 5,
          load: { kind: 'power', powerW: 900 } as const,
          otherLoads: [],
        },
      ],
    };
    const machine = {
      ...plan.machine,
      controller: { ...plan.machine.controller, batteryCurrentLimitA: 20 },
    };
    const result = runOuting({ ...option, controller: null }, machine, outing);
    expect(Math.max(...result.series.motorCurrentA)).toBeLessThan(20.2);
    expect(result.events.map(({ kind }) => kind)).toContain('controller-limit');
  });
});
