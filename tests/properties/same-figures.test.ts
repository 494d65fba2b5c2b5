import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Plan } from '#core/plan/schema/plan.ts';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { displaySymbol, fromDisplay, toDisplay } from '#core/units/display.ts';
import { unitTable } from '#core/units/unit-table.ts';
import { forRandomPlans, planOfSeed } from '../support/random-plans.ts';
import { sheetOf } from '../support/sheet-of.ts';
import { command } from '../unit/headless/memory-host.ts';

type Figures = Readonly<Record<string, unknown>>;

/** The JSON a command prints of a plan; fails when it complains. */
async function printed(plan: Plan, ...argv: readonly string[]): Promise<Figures> {
  const { code, out, err } = await command([...argv, '--json'], { plan: writePlan(plan) });
  expect([0, 3], err).toContain(code);
  return JSON.parse(out) as Figures;
}

/** What stands in a result under the names of another record, as it would be printed. */
const under = (names: Figures, from: object): unknown =>
  JSON.parse(
    JSON.stringify(
      Object.fromEntries(Object.keys(names).map((key) => [key, (from as Figures)[key]])),
    ),
  );

/** Figures that stand in the study of an option, in its run and on its sheet, by the same name everywhere. */
async function expectOneAnswer(plan: Plan): Promise<void> {
  const study = studyPlan(plan);
  const { options } = (await printed(plan, 'run', 'plan')) as unknown as { options: Figures[] };
  expect(options.map(({ id }) => id)).toEqual(plan.options.map(({ id }) => id));
  for (const [index, option] of study.options.entries()) {
    const { series: _series, drive: _drive, ...run } = option.run;
    expect(options[index]).toMatchObject(JSON.parse(JSON.stringify(run)) as Figures);
    const sheet = sheetOf(plan, { optionId: option.id }).figures;
    const { outings, findingCounts, headlineOuting, chargerVerdict, hoursToFull, ...whole } = sheet;
    expect(headlineOuting).toBe(study.outingId);
    expect(under(whole, option)).toEqual(JSON.parse(JSON.stringify(whole)));
    expect(under(whole, options[index]!)).toEqual(JSON.parse(JSON.stringify(whole)));
    expect(chargerVerdict).toBe(options[index]!['chargerVerdict']);
    expect(hoursToFull).toBe(options[index]!['hoursToFull']);
    const outing = outings.find(({ id }) => id === headlineOuting)!;
    for (const name of ['runTimeMin', 'endedBy', 'minimumBusVoltageV', 'deliveredWh'] as const)
      expect(outing[name]).toBe(options[index]![name]);
    expect(outing.remainingPercent).toBe(options[index]!['remainingPercent']);
    expect(Object.values(findingCounts).every((count) => Number.isInteger(count))).toBe(true);
  }
}

describe('one plan, one answer', () => {
  test.each(sampleNames)(
    'command line, study and sheet of the sample %s agree digit for digit',
    (name) => expectOneAnswer(samplePlan(name)),
  );

  test('command line, study and sheet of random plans agree digit for digit', async () => {
    const seeds = fc.sample(fc.nat(), { seed: 20261126, numRuns: 4 });
    console.log(`random plans of the seeds ${seeds.join(', ')}`);
    for (const seed of seeds) await expectOneAnswer(planOfSeed(seed));
  });
});

describe('units on display', () => {
  const anyUnit = fc.constantFrom(...unitTable.map(({ symbol }) => symbol));
  const system = fc.constantFrom('metric' as const, 'us' as const);

  test('any value shown in any system and taken back is the value that was kept', () => {
    fc.assert(
      fc.property(
        anyUnit,
        system,
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (symbol, shown, value) => {
          const back = fromDisplay(toDisplay(value, symbol, shown), symbol, shown);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * (Math.abs(value) + 460));
        },
      ),
      { seed: 20261126, numRuns: 2000 },
    );
  });

  test('the figures shown are those of the definitions', () => {
    // [P] International yard and pound 1959: 25.4 mm to the inch, 0.45359237 kg to the pound, 1.609344 km to the mile.
    expect(displaySymbol('kg', 'us')).toBe('lb');
    expect(toDisplay(0.45359237, 'kg', 'us')).toBeCloseTo(1, 12);
    expect(toDisplay(25.4, 'mm', 'us')).toBeCloseTo(1, 12);
    expect(toDisplay(1.609344, 'km/h', 'us')).toBeCloseTo(1, 12);
    expect(toDisplay(1, 'm/s', 'metric')).toBeCloseTo(3.6, 12);
    expect(toDisplay(-40, '°C', 'us')).toBeCloseTo(-40, 12);
    expect(toDisplay(100, '°C', 'us')).toBeCloseTo(212, 12);
  });

  test('leave every figure of a sheet and the plan behind it as they are', () => {
    const expectUntouched = (plan: Plan): void => {
      const text = writePlan(plan);
      const metric = sheetOf(plan, { units: 'metric' });
      const us = sheetOf(plan, { units: 'us' });
      expect(us.figures).toEqual(metric.figures);
      expect(us.planHash).toBe(metric.planHash);
      expect(writePlan(plan)).toBe(text);
    };
    for (const name of sampleNames) expectUntouched(samplePlan(name));
    forRandomPlans(2_000, expectUntouched);
  });
});
