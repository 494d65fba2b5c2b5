import { describe, expect, test } from 'vitest';
import type { Finding, FindingId } from '#core/findings/finding.ts';
import { mergeFindings } from '#core/findings/merge-findings.ts';
import { weekFindings } from '#core/findings/week-findings.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { Week } from '#core/plan/schema/week.ts';
import { newWeek } from '#core/week/index.ts';
import { findingsOf, planWith, severitiesOf } from './plan-with.ts';

const withWeek = (optionId: string, change: Partial<Week> | null): Plan =>
  planWith('orchard-cart', optionId, (_option, plan) => {
    plan.week =
      change === null
        ? null
        : { ...newWeek(plan), usage: [{ ...newWeek(plan).usage[0]!, durationMin: 30 }], ...change };
  });
const place = (change: Partial<Week['place']>): Partial<Week> => ({
  place: { ...newWeek({ headlineOuting: 'x' }).place, ...change },
});
const ofWeek = (id: FindingId, plan: Plan): Finding[] =>
  weekFindings(plan).filter((finding) => finding.id === id);
const everyDay: Week['usage'][number]['days'] = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const use = (durationMin: number, days = everyDay): Pick<Week, 'usage'> => ({
  usage: [
    { id: 'use', outingId: 'picking-shift', days, startMin: 600, durationMin, chancePercent: 100 },
  ],
});
const yearLong = { firstMonth: 1, weeks: 52, seed: 1 };

describe('CHG-7: the place of charging', () => {
  test('asks where the pack is charged when no week is stated', () => {
    expect(findingsOf('CHG-7', withWeek('agm-series', null))).toMatchObject([
      { status: 'not-checked' },
    ]);
  });

  test('warns of a sleeping room for every chemistry', () => {
    expect(severitiesOf('CHG-7', withWeek('agm-series', place({ kind: 'sleeping-room' })))).toEqual(
      ['warn'],
    );
    expect(severitiesOf('CHG-7', withWeek('lfp-pack', place({ kind: 'sleeping-room' })))).toEqual([
      'warn',
    ]);
  });

  test('warns of a closed room for lead, and names the opening it needs', () => {
    const [finding] = findingsOf('CHG-7', withWeek('agm-series', place({ kind: 'closed-room' })));
    // 12 cells of 18 Ah: 0.05 * 12 * 8 * 18 / 1000 = 0.0864 m³/h, 28 times that in cm² (IEC 62485-2, recomputed).
    expect(finding!.facts.find(({ unit }) => unit === 'm³/h')!.value).toBeCloseTo(0.0864, 9);
    expect(finding!.facts.find(({ unit }) => unit === 'cm²')!.value).toBeCloseTo(2.4192, 9);
  });

  test('is content with an opening that is just large enough, or the open air', () => {
    expect(findingsOf('CHG-7', withWeek('agm-series', place({ openingCm2: 2.42 })))).toEqual([]);
    expect(severitiesOf('CHG-7', withWeek('agm-series', place({ openingCm2: 2.41 })))).toEqual([
      'warn',
    ]);
    expect(findingsOf('CHG-7', withWeek('agm-series', place({ kind: 'open-air' })))).toEqual([]);
  });

  test('warns of lithium on the way out, notes it unwatched, is content when watched', () => {
    expect(severitiesOf('CHG-7', withWeek('lfp-pack', place({ onEscapeRoute: true })))).toEqual([
      'warn',
    ]);
    expect(severitiesOf('CHG-7', withWeek('lfp-pack', {}))).toEqual(['note']);
    const windows = [{ ...newWeek({ headlineOuting: 'x' }).windows[0]!, attended: true }];
    expect(findingsOf('CHG-7', withWeek('lfp-pack', { windows }))).toEqual([]);
  });
});

describe('KEP-1: storage', () => {
  test('warns of half a year in storage with the interval exceeded', () => {
    expect(ofWeek('KEP-1', withWeek('agm-series', {}))).toMatchObject([
      { severity: 'warn', status: 'finding' },
    ]);
  });

  test('has nothing to say of three weeks, nor of a year without storage', () => {
    expect(ofWeek('KEP-1', withWeek('agm-series', { season: { ...yearLong, weeks: 49 } }))).toEqual(
      [],
    );
    expect(ofWeek('KEP-1', withWeek('agm-series', { season: yearLong }))).toEqual([]);
  });

  test('has nothing to say of lithium stored half full for half a year with the isolator open', () => {
    expect(ofWeek('KEP-1', withWeek('lfp-pack', {}))).toEqual([]);
  });
});

describe('KEP-2: life', () => {
  test('notes a lead pack driven deep every day, with the seasons it lasts', () => {
    const [finding] = ofWeek('KEP-2', withWeek('agm-series', { ...use(40), season: yearLong }));
    expect(finding!.severity).toBe('note');
    expect(finding!.facts.find(({ unit }) => unit === 'seasons')!.value).toBeLessThan(4);
  });

  test('has nothing to say of the same pack driven ten minutes at weekends', () => {
    expect(ofWeek('KEP-2', withWeek('agm-series', use(10, ['sat', 'sun'])))).toEqual([]);
  });
});

describe('CHG-8: refilling between outings', () => {
  const routine = newWeek({ headlineOuting: 'x' }).routine;

  test('notes the outings of the week that a weekend charge starves', () => {
    const [finding] = ofWeek(
      'CHG-8',
      withWeek('agm-series', { ...use(35), routine: { ...routine, trigger: 'weekend' } }),
    );
    expect(finding!.what).toMatch(/times it ends early/);
  });

  test('has nothing to say when every night refills the pack', () => {
    expect(
      ofWeek(
        'CHG-8',
        withWeek('agm-series', { ...use(35), season: { firstMonth: 6, weeks: 10, seed: 1 } }),
      ),
    ).toEqual([]);
  });

  test('leaves an outing that is too long for a full pack to the rule on run time', () => {
    expect(ofWeek('CHG-8', withWeek('agm-series', { ...use(240, ['sat']) }))).toEqual([]);
  });

  test('asks for the week where none is stated', () => {
    expect(
      weekFindings(withWeek('agm-series', null)).map(({ id, status }) => [id, status]),
    ).toEqual([
      ['KEP-1', 'not-checked'],
      ['KEP-2', 'not-checked'],
      ['CHG-8', 'not-checked'],
    ]);
  });
});

test('findings of the week speak German, and merge behind what is more severe', () => {
  const plan = withWeek('agm-series', {});
  const german = weekFindings(plan, 'de');
  expect(german.find(({ id }) => id === 'KEP-1')!.what).toContain('Tage Lagerung');
  const merged = mergeFindings(weekFindings(plan), [{ ...german[0]!, severity: 'stop' }]);
  expect(merged[0]!.severity).toBe('stop');
});
