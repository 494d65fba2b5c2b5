import { describe, expect, test } from 'vitest';
import { mustStop, planFindings } from '#core/findings/plan-findings.ts';
import { rules } from '#core/findings/rules.ts';
import { resolvePath } from '#core/plan/field-docs.ts';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { findingsOf, planWith, severitiesOf, studiesWith } from './plan-with.ts';

const plan = planWith('orchard-cart', 'agm-series');

describe('RUN-1: shorter than wanted', () => {
  test('a tenth of a minute short warns, just enough passes', () => {
    expect(severitiesOf('RUN-1', plan, studiesWith(plan, { runTimeMin: 89.9 }))).toEqual(['warn']);
    expect(findingsOf('RUN-1', plan, studiesWith(plan, { runTimeMin: 90 }))).toEqual([]);
  });

  test('the goal is that of the outing that was run', () => {
    const studies = studyPlan(plan, 'cold-morning').options.map((study) => ({
      ...study,
      run: { ...study.run, runTimeMin: 70 },
    }));
    const of = (outing: string) =>
      planFindings(plan, studies, 'en', outing).filter(({ id }) => id === 'RUN-1');
    expect(of('picking-shift')).toHaveLength(1);
    expect(of('cold-morning')).toHaveLength(0);
  });
});

test('RUN-2: a promise of more than a tenth too much is noted, a tenth passes', () => {
  const promised = (plainMin: number) =>
    severitiesOf('RUN-2', plan, studiesWith(plan, { runTimeMin: 100 }, { plainMin }));
  expect(promised(110.1)).toEqual(['note']);
  expect(promised(109.9)).toEqual([]);
});

test('RID-1 reminds of hold-down with the mass of the heaviest pack', () => {
  expect(findingsOf('RID-1', plan)[0]!.what).toContain('11 kg');
});

test('LAW-1 names a voltage plainly above the toy limit, and speaks in general below it', () => {
  expect(findingsOf('LAW-1', planWith('campsite-tug', 'lithium-36'))).toMatchObject([
    { optionId: 'lithium-36' },
  ]);
  expect(findingsOf('LAW-1', planWith('orchard-cart', 'lfp-pack'))).toMatchObject([
    { optionId: null },
  ]);
});

describe('the list of findings', () => {
  test('stops come first and questions last', () => {
    const sample = samplePlan('market-scooter');
    const { findings } = studyPlan(sample);
    const ranks = findings.map(({ status, severity }) =>
      status === 'not-checked' ? 3 : ['stop', 'warn', 'note'].indexOf(severity),
    );
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    expect(mustStop(findings)).toBe(true);
  });

  test.each(sampleNames)(
    'every finding of %s has words, a source and fields that exist',
    (name) => {
      for (const language of ['en', 'de'] as const) {
        for (const finding of studyPlan(samplePlan(name), undefined, language).findings) {
          for (const text of [finding.what, finding.consequence, finding.remedy, finding.source]) {
            expect(text.length).toBeGreaterThan(5);
            expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
          }
          for (const field of finding.fields) expect(resolvePath(field), field).not.toBeNull();
        }
      }
    },
  );

  test('German and English findings are the same ones in other words', () => {
    const english = studyPlan(samplePlan('market-scooter'), undefined, 'en').findings;
    const german = studyPlan(samplePlan('market-scooter'), undefined, 'de').findings;
    expect(german.map(({ id, optionId, severity }) => [id, optionId, severity])).toEqual(
      english.map(({ id, optionId, severity }) => [id, optionId, severity]),
    );
    expect(german[0]!.what).not.toBe(english[0]!.what);
  });

  test('no rule identifier stands twice in the table of rules', () => {
    const ids = rules.map((rule) => rule.id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
