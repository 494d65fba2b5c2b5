import { describe, expect, test } from 'vitest';
import { spreadPlan } from '#core/compare/spread/spread-plan.ts';
import { planSensitivity } from '#core/compare/sensitivity/sensitivity.ts';
import { searchPacks } from '#core/compare/search/search-packs.ts';
import { usualWishes } from '#core/compare/search/usual-wishes.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { command } from './memory-host.ts';

const plan = samplePlan('orchard-cart');
const files = { plan: writePlan(plan) };

/** The JSON a command prints; fails when it prints anything else or complains. */
async function json<T>(...argv: readonly string[]): Promise<T> {
  const { code, out, err } = await command([...argv, '--json'], files);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as T;
}

describe('spread', () => {
  interface Spread {
    readonly caseCount: number;
    readonly options: {
      readonly id: string;
      readonly runTimeLowMin: number;
      readonly runTimeLikelyMin: number;
      readonly runTimeHighMin: number;
      readonly goalPercent: number;
    }[];
    readonly comparisons: { readonly firstOutlastsPercent: number }[];
  }

  test('prints low, likely and high of every option and who outlasts whom', async () => {
    const { code, out } = await command(['spread', 'plan', '--cases', '20'], files);
    expect(code).toBe(0);
    for (const { name } of plan.options) expect(out).toContain(name);
    expect(out.match(/ outlasts .* in \d+ of 100 cases/g)).toHaveLength(3);
  });

  test('prints one JSON document with the figures the core gives', async () => {
    const spread = await json<Spread>('spread', 'plan', '--cases', '20', '--seed', '4');
    const core = spreadPlan(plan, { caseCount: 20, seed: 4 });
    expect(spread.caseCount).toBe(20);
    expect(spread.options.map(({ runTimeLowMin }) => runTimeLowMin)).toEqual(
      core.options.map(({ low }) => low.value),
    );
    expect(spread.options.map(({ goalPercent }) => goalPercent)).toEqual(
      core.options.map(({ goalPercent }) => goalPercent),
    );
  });

  test('is narrower with a narrower range, and the same again with the same seed', async () => {
    const ask = (...more: string[]) => json<Spread>('spread', 'plan', '--cases', '40', ...more);
    const wide = await ask();
    const narrow = await ask('--range', 'exponent=1.17..1.19', '--range', 'motor-load=99..101');
    wide.options.slice(0, 1).forEach((option, place) => {
      const other = narrow.options[place]!;
      expect(other.runTimeHighMin - other.runTimeLowMin).toBeLessThan(
        0.8 * (option.runTimeHighMin - option.runTimeLowMin),
      );
    });
    expect(await ask()).toEqual(wide);
  });

  test.each([
    [['--cases', '5'], '--cases: Give a whole number from 10 to 20000.'],
    [['--cases', '10.5'], '--cases:'],
    [['--cases', 'many'], '--cases:'],
    [['--seed', 'x'], '--seed:'],
    [['--range', 'weather=1..2'], '--range: weather=1..2 names no assumption.'],
    [['--range', 'capacity'], '--range: capacity names no assumption.'],
    [['--range', 'capacity=20..10'], '--range: capacity=20..10 is no range.'],
    [['--range', 'capacity=0..10'], '--range: capacity=0..10 is no range.'],
    [['--range', 'capacity=1..'], '--range: capacity=1.. is no range.'],
    [['--outing', 'nowhere'], '--outing: there is no outing nowhere.'],
  ])('refuses %j with one line', async (more, line) => {
    const { code, out, err } = await command(['spread', 'plan', ...more], files);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(line);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});

describe('sensitivity', () => {
  test('prints every assumption and what to measure first, in the language asked for', async () => {
    const { out } = await command(['sensitivity', 'plan', '--language', 'de'], files);
    const [first] = planSensitivity(plan);
    for (const { label } of first!.effects) expect(out).toContain(label.de);
    expect(out.match(/Measure first: /g)).toHaveLength(plan.options.length);
  });

  test('prints one JSON document with minutes at low and high and per unit', async () => {
    const { options } = await json<{
      options: { effects: { id: string; label: string; atLowMin: number }[] }[];
    }>('sensitivity', 'plan');
    const core = planSensitivity(plan);
    expect(options.map(({ effects }) => effects.map(({ id, atLowMin }) => [id, atLowMin]))).toEqual(
      core.map(({ effects }) => effects.map(({ id, atLowMin }) => [id, atLowMin])),
    );
    expect(options[0]!.effects[0]!.label).toBe(core[0]!.effects[0]!.label.en);
  });

  test.each([
    [['--language', 'fr'], '--language: fr is not known.'],
    [['--range', 'x=1..2'], '--range:'],
  ])('refuses %j with one line', async (more, line) => {
    const { code, err } = await command(['sensitivity', 'plan', ...more], files);
    expect(code).toBe(2);
    expect(err).toContain(line);
  });
});

describe('search', () => {
  interface Search {
    readonly found: {
      readonly option: { readonly pack: { readonly block: { readonly chemistry: string } } };
      readonly massKg: number;
      readonly price: number;
      readonly runTimeMin: number;
    }[];
    readonly rejected: Record<string, number>;
    readonly candidateCount: number;
  }

  test('prints the packs found and how many fell out by which wish', async () => {
    const { code, out } = await command(['search', 'plan', '--parallel', '2'], files);
    expect(code).toBe(0);
    expect(out).toContain('LFP 24 V 20 A·h');
    expect(out).toMatch(/candidates: \d+ found; fell out: .*voltage \d+/);
  });

  test('prints one JSON document with what the core finds for the wishes of the plan', async () => {
    const search = await json<Search>('search', 'plan');
    const core = searchPacks(plan, usualWishes(plan));
    expect(search.candidateCount).toBe(core.candidateCount);
    expect(search.rejected).toEqual(core.rejected);
    expect(search.found.map(({ runTimeMin }) => runTimeMin)).toEqual(
      core.found.map(({ runTimeMin }) => runTimeMin),
    );
  });

  test('keeps to the wishes of the command', async () => {
    const words =
      'search plan --chemistry agm --mass 16.5 --price 400 --goal 60 --bay 500x300x200 --from 24 --to 24';
    const search = await json<Search>(...words.split(' '));
    expect(search.found.length).toBeGreaterThan(0);
    for (const { option, massKg, price, runTimeMin } of search.found) {
      expect(option.pack.block.chemistry).toBe('agm');
      expect(massKg).toBeLessThanOrEqual(16.5);
      expect(price).toBeLessThanOrEqual(400);
      expect(runTimeMin).toBeGreaterThanOrEqual(60);
    }
  });

  test.each([
    [['--from', '30', '--to', '20'], '--to: Give a voltage at or above --from'],
    [['--from', 'low'], '--from: Give a number from 1 to 500.'],
    [['--bay', '400x200'], '--bay: Give three lengths in millimetres'],
    [['--bay', '400x-2x5'], '--bay:'],
    [['--chemistry', 'nicd'], '--chemistry: nicd is not known.'],
    [['--chargers', 'some'], '--chargers: Use one of: any, at-hand, open.'],
    [['--parallel', '13'], '--parallel: Give a whole number from 1 to 12.'],
    [['--mass', '-1'], '--mass:'],
  ])('refuses %j with one line', async (more, line) => {
    const { code, out, err } = await command(['search', 'plan', ...more], files);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(line);
  });
});
