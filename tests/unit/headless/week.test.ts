import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { writePlan } from '#core/plan/write-plan.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { command } from './memory-host.ts';

const cart = writePlan(samplePlan('orchard-cart'));
const scooter = writePlan(samplePlan('market-scooter'));

describe('week', () => {
  test('prints every routine of every option, the proposed one marked, and what would fail', async () => {
    const { code, out } = await command(['week', 'plan'], { plan: scooter });
    expect(code).toBe(0);
    expect(out.match(/after-use/g)).toHaveLength(3);
    expect(out.match(/ \*/g)).toHaveLength(3);
    expect(out).toContain('would fail: market-day');
    expect(out).toContain('plug in ');
  });

  test('prints one JSON document with a study of each option', async () => {
    const { out } = await command(['week', 'plan', '--json'], { plan: cart });
    const { options } = JSON.parse(out) as {
      options: {
        optionId: string;
        seasons: { failedOutings: number; weekLowestPercent: number[] }[];
      }[];
    };
    expect(options.map(({ optionId }) => optionId)).toEqual([
      'agm-series',
      'lfp-pack',
      'agm-two-strings',
    ]);
    for (const { seasons } of options) {
      expect(seasons.length).toBeGreaterThanOrEqual(3);
      expect(seasons[0]!.weekLowestPercent).toHaveLength(20);
    }
  });

  test('writes a calendar that another program reads, from the week asked for', async () => {
    const { code, files } = await command(
      ['week', 'plan', '--option', 'lfp-pack', '--calendar', 'out.ics', '--from', '2026-06-03'],
      { plan: cart },
    );
    expect(code).toBe(0);
    const part = new ICAL.Component(
      ICAL.parse(files.get('out.ics')!) as [string, unknown[], unknown[]],
    );
    const first = new ICAL.Event(part.getFirstSubcomponent('vevent')!);
    expect(first.isRecurring()).toBe(true);
    expect(first.startDate.toString().slice(0, 10)).toBe('2026-06-01');
  });

  test('never overwrites a calendar without being told', async () => {
    const { code, err } = await command(['week', 'plan', '--calendar', 'out.ics'], {
      plan: cart,
      'out.ics': 'old',
    });
    expect(code).toBe(2);
    expect(err).toContain('--force');
  });

  test.each([
    [['week', 'plan', '--option', 'x'], '--option: x is not in the plan.'],
    [['week', 'plan', '--from', '2026-02-30'], '--from: 2026-02-30 is no day.'],
    [['week', 'plan', '--language', 'xx'], '--language: xx is not known.'],
  ])('%j is refused with code 2 and one line', async (argv, line) => {
    const { code, out, err } = await command(argv, { plan: cart });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(line);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});

test('charge prints the charge after the outing and the ways to charge the blocks', async () => {
  const { out } = await command(['charge', 'plan', '--json'], { plan: scooter });
  const { options } = JSON.parse(out) as {
    options: {
      verdict: string;
      charge: { hours: number; inAh: number; ways: { way: string }[] };
    }[];
  };
  expect(options[0]!.charge.ways.map(({ way }) => way)).toEqual([
    'whole',
    'one-after-another',
    'isolated-each',
  ]);
  expect(options[0]!.charge.inAh).toBeGreaterThan(3);
  expect(options[2]!.verdict).toBe('misfits');
});
