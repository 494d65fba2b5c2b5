import { describe, expect, test } from 'vitest';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { studyCharging } from '#core/study/study-charging.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { figuresApart } from '../support/figures-in.ts';
import { forRandomPlans } from '../support/random-plans.ts';
import { sheetOf } from '../support/sheet-of.ts';

/** Every text of a value by its place, so that two languages can be laid side by side. */
function textsOf(value: unknown, path = ''): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return [];
  return Object.entries(value).flatMap(([key, child]) => textsOf(child, `${path}.${key}`));
}

/** Every number of a value, in order. */
function numbersOf(value: unknown): unknown[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}

/** Texts whose figures differ between the languages, with both wordings. */
function apartIn(english: unknown, german: unknown): string[] {
  const other = new Map(textsOf(german));
  return textsOf(english).flatMap(([path, text]) => {
    const words = other.get(path) ?? '';
    const apart = figuresApart(text, words);
    return apart.length === 0 ? [] : [`${path}: ${apart.join(', ')}: ${text} | ${words}`];
  });
}

function expectSameFigures(english: unknown, german: unknown): void {
  expect(apartIn(english, german)).toEqual([]);
  expect(numbersOf(german)).toEqual(numbersOf(english));
}

const findingsOf = (plan: Plan, language: 'en' | 'de') => {
  const study = studyPlan(plan, undefined, language);
  const runs = study.options.map(({ run }) => run);
  return [study.findings, studyCharging(plan, study.outingId, runs, language).findings];
};

describe('English and German', () => {
  test('a figure that is missing, altered or put in the wrong decimal place is noticed', () => {
    expect(figuresApart('12.5 V after 1,200 s', '12,5 V nach 1.200 s')).toEqual([]);
    expect(figuresApart('by 33 CFR 183.425', 'nach 33 CFR 183.425')).toEqual([]);
    expect(figuresApart('12.5 V', '1,25 V')).toEqual(['en 12.5', 'de 1,25']);
    expect(figuresApart('12.5 V', 'zu viel')).toEqual(['en 12.5']);
    expect(figuresApart('at −5 °C', 'bei 5 °C')).toEqual(['en −5', 'de 5']);
  });

  test.each(sampleNames)('findings of the sample %s name the same figures', (name) => {
    const english = findingsOf(samplePlan(name), 'en');
    expect(textsOf(english).length).toBeGreaterThan(20);
    expectSameFigures(english, findingsOf(samplePlan(name), 'de'));
  });

  test.each(sampleNames)(
    'the sheet of the sample %s holds the same figures, metric and US',
    (name) => {
      for (const units of ['metric', 'us'] as const) {
        const english = sheetOf(samplePlan(name), { language: 'en', units, caseCount: 10 });
        const german = sheetOf(samplePlan(name), { language: 'de', units, caseCount: 10 });
        expect(german.figures).toEqual(english.figures);
        expectSameFigures(english.parts, german.parts);
      }
    },
  );

  test('findings of random plans name the same figures', () => {
    forRandomPlans(4_000, (plan) =>
      expectSameFigures(findingsOf(plan, 'en'), findingsOf(plan, 'de')),
    );
  });

  test('sheets of random plans hold the same figures', () => {
    forRandomPlans(4_000, (plan) =>
      expectSameFigures(
        sheetOf(plan, { language: 'en' }).parts,
        sheetOf(plan, { language: 'de' }).parts,
      ),
    );
  });
});
