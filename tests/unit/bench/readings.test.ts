import { describe, expect, test } from 'vitest';
import { blockHealth } from '#core/bench/readings/health.ts';
import { explainGap } from '#core/bench/readings/explain-gap.ts';
import { judgeReadings } from '#core/bench/readings/judge-readings.ts';
import { measuredResistance } from '#core/bench/readings/block-resistance.ts';
import { newReading, readingKinds } from '#core/bench/readings/new-reading.ts';
import { readingSchema, type Reading } from '#core/plan/schema/reading.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';

const cart = samplePlan('orchard-cart');
const option = cart.options[0]!;
const start = {
  id: 'a',
  date: '2026-03-01',
  optionId: option.id,
  outingId: cart.headlineOuting,
  blockVoltageV: 12.8,
};
const withReadings = (readings: readonly Reading[]): Plan => ({
  ...cart,
  bench: { readings: [...readings], fits: [], health: [] },
});
const study = studyPlan(cart);
const studyOf = (optionId: string) => study.options.find((entry) => entry.id === optionId) ?? null;
const judge = (reading: Reading) => judgeReadings(cart, [reading], studyOf);

describe('readings', () => {
  test.each(readingKinds)('a new %s is valid and carries its accuracy', (kind) => {
    const reading = newReading(kind, start);
    expect(readingSchema.safeParse(reading).success).toBe(true);
    expect(reading.accuracyPercent).toBeGreaterThan(0);
  });
  test('resistance is the drop over the step of current: 12.8 V to 12.3 V at 10 A is 50 mΩ', () => {
    const reading = {
      ...newReading('loaded-voltage', start),
      kind: 'loaded-voltage',
      beforeV: 12.8,
      loadedV: 12.3,
      currentA: 10,
      beforeA: 0,
    } as Extract<Reading, { kind: 'loaded-voltage' }>;
    expect(measuredResistance(reading)!.ohm).toBeCloseTo(0.05, 12);
    expect(measuredResistance({ ...reading, beforeA: 10 })).toBeNull();
  });
});

describe('the verdict', () => {
  const planned = studyOf(option.id)!.run.runTimeMin;
  const timed = (timeMin: number): Reading => ({
    ...newReading('time-to-cutoff', start),
    kind: 'time-to-cutoff',
    timeMin,
    outingId: cart.headlineOuting,
  });
  test.each([
    [1, 'agrees'],
    [1.05, 'agrees'],
    [1.3, 'better'],
    [0.7, 'worse'],
  ])('a run of %d times the planned minutes is judged as %s', (share, state) => {
    expect(judge(timed(planned * share))[0]!.state).toBe(state);
  });
  test('a joint of 10 mV at 10 A is sound, one of 50 mV is not', () => {
    const joint = (dropMv: number): Reading => ({
      ...newReading('joint-drop', start),
      kind: 'joint-drop',
      dropMv,
      jointCurrentA: 10,
      joint: 'lug',
    });
    expect(judge(joint(10))[0]!.state).toBe('agrees');
    expect(judge(joint(50))[0]).toMatchObject({ state: 'worse', measured: 5 });
  });
  test('rest volts two hours after charge are left open for lead', () => {
    const rest = (hoursSinceCharge: number): Reading => ({
      ...newReading('rest-voltage', start),
      kind: 'rest-voltage',
      voltageV: 12.2,
      hoursSinceCharge,
    });
    expect(judge(rest(2))[0]!.state).toBe('open');
    expect(judge(rest(12))[0]!.state).toBe('worse');
  });
});

describe('the gap between planned and measured minutes', () => {
  test('is explained first by the block whose resistance is far above the plan', () => {
    const readings: Reading[] = [
      {
        ...newReading('time-to-cutoff', { ...start, id: 'time' }),
        kind: 'time-to-cutoff',
        timeMin: studyOf(option.id)!.run.runTimeMin * 0.6,
        outingId: cart.headlineOuting,
      },
      {
        ...newReading('loaded-voltage', { ...start, id: 'bad' }),
        kind: 'loaded-voltage',
        beforeV: 12.8,
        loadedV: 11.3,
        currentA: 10,
        beforeA: 0,
        secondsOnLoad: 10,
        blockTemperatureC: null,
        position: 2,
      },
      {
        ...newReading('joint-drop', { ...start, id: 'joint' }),
        kind: 'joint-drop',
        dropMv: 20,
        jointCurrentA: 10,
        joint: 'switch',
      },
    ];
    const gap = explainGap(withReadings(readings), option.id, cart.headlineOuting)!;
    expect(gap.causes[0]).toMatchObject({
      kind: 'block-resistance',
      readingId: 'bad',
      position: 2,
    });
    expect(gap.causes[0]!.runTimeMin).toBeLessThan(gap.plannedMin);
    expect(
      gap.causes.every(
        (cause, index, all) =>
          index === 0 || cause.explainsPercent <= all[index - 1]!.explainsPercent,
      ),
    ).toBe(true);
  });
  test('a block that rested at 12.2 V instead of full explains part of a short run, a pack read too early nothing', () => {
    const rest = (hoursSinceCharge: number): Reading => ({
      ...newReading('rest-voltage', { ...start, id: 'rest' }),
      kind: 'rest-voltage',
      voltageV: 12.2,
      hoursSinceCharge,
      position: 2,
    });
    const timed: Reading = {
      ...newReading('time-to-cutoff', { ...start, id: 'time' }),
      kind: 'time-to-cutoff',
      timeMin: studyOf(option.id)!.run.runTimeMin * 0.5,
      outingId: cart.headlineOuting,
    };
    const causes = (hours: number) =>
      explainGap(withReadings([timed, rest(hours)]), option.id, cart.headlineOuting)!.causes;
    expect(causes(12)[0]).toMatchObject({ kind: 'block-charge', position: 2 });
    expect(causes(1)).toEqual([]);
  });
  test('more current than planned at the same speed is put down to the road', () => {
    const tug = samplePlan('campsite-tug');
    const tugOption = tug.options[0]!;
    const common = { ...start, optionId: tugOption.id, outingId: tug.headlineOuting };
    const bench = {
      readings: [
        {
          ...newReading('time-to-cutoff', { ...common, id: 'time' }),
          kind: 'time-to-cutoff' as const,
          timeMin: 10,
          outingId: tug.headlineOuting,
        },
        {
          ...newReading('speed', { ...common, id: 'speed' }),
          kind: 'speed' as const,
          distanceM: 50,
          timeS: 36,
          packCurrentA: 15,
          surface: 'asphalt' as const,
          gradePercent: 0,
        },
      ],
      fits: [],
      health: [],
    };
    const gap = explainGap({ ...tug, bench }, tugOption.id, tug.headlineOuting)!;
    expect(gap.causes[0]).toMatchObject({ kind: 'road', readingId: 'speed' });
    expect(gap.causes[0]!.runTimeMin).toBeLessThan(gap.plannedMin);
  });
  test('is unknown without a timed run', () => {
    expect(explainGap(withReadings([]), option.id, cart.headlineOuting)).toBeNull();
  });
});

describe('a speed', () => {
  const tug = samplePlan('campsite-tug');
  const common = { ...start, optionId: tug.options[0]!.id, outingId: tug.headlineOuting };
  const speed = (packCurrentA: number | null): Reading => ({
    ...newReading('speed', common),
    kind: 'speed',
    distanceM: 50,
    timeS: 36,
    packCurrentA,
    surface: 'asphalt',
    gradePercent: 0,
  });
  test('read with a current is held to the current of the plan, without one to its top speed', () => {
    const [current] = judgeReadings(tug, [speed(12)], () => null);
    expect(current).toMatchObject({ subject: 'cruise-current', measured: 12, state: 'worse' });
    expect(current!.planned).toBeLessThan(9);
    expect(judgeReadings(tug, [speed(null)], () => null)[0]).toMatchObject({
      subject: 'speed',
      measured: 5,
      state: 'open',
    });
  });
});

describe('health', () => {
  const point = (
    date: string,
    position: number,
    capacityPercent: number,
    resistancePercent = 120,
  ) => ({
    date,
    optionId: option.id,
    string: 1,
    position,
    capacityPercent,
    resistancePercent,
    source: 'test',
  });
  const healthOf = (points: ReturnType<typeof point>[]) =>
    blockHealth({ ...cart, bench: { readings: [], fits: [], health: points } });
  test('is sorted by date and gives the loss per year: 100 % to 80 % in two years is 10 % a year', () => {
    const [block] = healthOf([point('2026-03-01', 1, 80), point('2024-03-01', 1, 100)]);
    expect(block!.lossPerYearPercent).toBeCloseTo(10, 6);
    expect(block!.latest.date).toBe('2026-03-01');
  });
  test('a worn block among sound ones asks for the whole string, two worn ones for both', () => {
    expect(
      healthOf([point('2026-03-01', 1, 50), point('2026-03-01', 2, 95)]).map(
        (block) => block.advice,
      ),
    ).toEqual(['replace-string', 'sound']);
    expect(
      healthOf([point('2026-03-01', 1, 50), point('2026-03-01', 2, 52)]).map(
        (block) => block.advice,
      ),
    ).toEqual(['replace', 'replace']);
  });
  test('a block read under load has its resistance followed, and a capacity known from before stays', () => {
    const loaded: Reading = {
      ...newReading('loaded-voltage', { ...start, id: 'load', date: '2026-09-01' }),
      kind: 'loaded-voltage',
      beforeV: 12.8,
      loadedV: 11.8,
      currentA: 10,
      beforeA: 0,
      secondsOnLoad: 5,
      blockTemperatureC: 25,
      position: 1,
    };
    const [block] = blockHealth({
      ...cart,
      bench: { readings: [loaded], fits: [], health: [point('2026-03-01', 1, 88)] },
    });
    // 100 mΩ against the 11 to 16 mΩ with polarisation of a new 18 A·h block: makers' tables, common practice, no source.
    expect(block!.latest.resistancePercent).toBeGreaterThan(500);
    expect(block!.latest.capacityPercent).toBe(88);
    expect(block!.points).toHaveLength(2);
    expect(block!.advice).toBe('replace');
  });
});
