import { describe, expect, test } from 'vitest';
import { newDifference } from '#core/plan/defaults.ts';
import type { PlanProblem } from '#core/plan/problem.ts';
import { readPlan } from '#core/plan/read-plan.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { valueAt } from '#core/plan/value-at.ts';
import { writePlan } from '#core/plan/write-plan.ts';

const sampleText = writePlan(samplePlan('orchard-cart'));

/** The problem a text gives; fails when the text is read without complaint. */
function problemOf(text: string, language: 'en' | 'de' = 'en'): PlanProblem {
  const result = readPlan(text, { language });
  if (result.ok) throw new Error('The text was read although it should have been refused');
  return result.problem;
}

/** The sample's text with one value replaced; undefined deletes it. */
function changed(path: string, value: unknown): string {
  return withValues({ [path]: value });
}

function withValues(values: Record<string, unknown>): string {
  const plan = JSON.parse(sampleText) as Record<string, unknown>;
  for (const [path, value] of Object.entries(values)) {
    const keys = path.split('.');
    const last = keys.pop()!;
    const parent = valueAt(plan, keys) as Record<string, unknown>;
    if (value === undefined) delete parent[last];
    else parent[last] = value;
  }
  return JSON.stringify(plan);
}

describe('a file that is no plan', () => {
  test('an empty file is called empty', () => {
    expect(problemOf('')).toMatchObject({ code: 'empty', path: '' });
    expect(problemOf('\uFEFF  \n')).toMatchObject({ code: 'empty' });
  });

  test('a file cut short says that it breaks off, and in which field', () => {
    const cut = sampleText.slice(0, sampleText.indexOf('"capacityAh"') + 14);
    expect(problemOf(cut)).toMatchObject({
      code: 'not-json',
      path: 'options.0.pack.block.capacityAh',
    });
    expect(problemOf(cut).problem).toContain('breaks off');
  });

  test('a file cut at any byte gives a typed problem', () => {
    for (let end = 0; end < sampleText.trimEnd().length; end += 37) {
      expect(['empty', 'not-json']).toContain(problemOf(sampleText.slice(0, end)).code);
    }
  });

  test('text that is no JSON is named with line and column', () => {
    expect(problemOf('{\n  "format": oops\n}')).toMatchObject({ code: 'not-json', path: 'format' });
    expect(problemOf('{\n  "format": oops\n}').problem).toContain('line 2, column 13');
  });

  test.each(['{}', '[]', '3', 'null', '"plan"', '{"format":"something-else","version":1}'])(
    'other JSON is not a plan: %s',
    (text) => expect(problemOf(text).code).toBe('not-a-plan'),
  );

  test('a file larger than 8 MiB is refused by its size', () => {
    expect(problemOf(`"${'x'.repeat(8 * 1024 * 1024)}"`).code).toBe('too-large');
    expect(problemOf(`"${'€'.repeat(3 * 1024 * 1024)}"`).code).toBe('too-large');
  });

  test('deep nesting is refused without a crash', () => {
    expect(problemOf(`${'['.repeat(100_000)}${']'.repeat(100_000)}`).code).toBe('too-deep');
  });

  test('a list of a million entries is refused', () => {
    expect(problemOf(`[${'0,'.repeat(1_000_000)}0]`).code).toBe('too-many');
  });

  test.each(['__proto__', 'constructor', 'prototype'])(
    'the key %s is refused with its path',
    (key) => {
      const text = sampleText.replace('"machine": {', `"machine": { "${key}": {"polluted": true},`);
      expect(problemOf(text)).toMatchObject({ code: 'forbidden-key', path: `machine.${key}` });
      expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    },
  );
});

describe('the format version', () => {
  test('a newer version is refused and both versions are named', () => {
    const problem = problemOf(changed('version', 7));
    expect(problem).toMatchObject({ code: 'too-new', path: 'version' });
    expect(problem.problem).toContain('version 7');
  });

  test('a version from before the first is refused', () => {
    expect(problemOf(changed('version', 0)).code).toBe('too-old');
  });

  test.each([1.5, '1', null, -1])('a version that is no whole number is refused: %s', (version) => {
    expect(problemOf(changed('version', version))).toMatchObject({
      code: 'not-a-plan',
      path: 'version',
    });
  });

  test('an older file is lifted step by step and says from where', () => {
    const text = withValues({ name: undefined, label: 'Orchard cart' });
    const result = readPlan(text, {
      version: 3,
      migrations: [
        {
          to: 2,
          name: 'label becomes title',
          migrate: ({ label, ...rest }) => ({ ...rest, title: label }),
        },
        {
          to: 3,
          name: 'title becomes name',
          migrate: ({ title, ...rest }) => ({ ...rest, name: title }),
        },
      ],
    });
    expect(result).toMatchObject({
      ok: true,
      migratedFrom: 1,
      leftOut: [],
      plan: { name: 'Orchard cart', version: 1 },
    });
  });
});

describe('a field with a wrong value', () => {
  const firstOption = samplePlan('orchard-cart').options[0]!;
  test.each<[string, string, unknown]>([
    ['a negative capacity', 'options.0.pack.block.capacityAh', -5],
    ['a zero resistance', 'options.0.pack.block.resistanceOhm', 0],
    ['zero blocks', 'options.0.pack.seriesCount', 0],
    ['ten thousand strings', 'options.0.pack.parallelCount', 10_000],
    ['half a string', 'options.0.pack.parallelCount', 1.5],
    ['not a number as text', 'options.0.pack.block.capacityAh', 'NaN'],
    ['an unknown chemistry', 'options.0.pack.block.chemistry', 'magic'],
    ['no option at all', 'options', []],
    ['thirteen options', 'options', Array.from({ length: 13 }, () => firstOption)],
    ['an identifier with spaces', 'options.0.id', 'Two words'],
    ['a control character in a name', 'name', 'a\u0007b'],
    ['a list where an object belongs', 'machine', []],
  ])('%s is refused, naming the field and the way out', (_case, path, value) => {
    const problem = problemOf(changed(path, value));
    expect(problem).toMatchObject({ code: 'invalid', path });
    expect(problem.title).not.toBe('');
    expect(problem.remedy.length).toBeGreaterThan(10);
  });

  test('an unknown kind of load lists the kinds there are', () => {
    const problem = problemOf(changed('outings.0.legs.0.load', { kind: 'magic' }));
    expect(problem).toMatchObject({ code: 'invalid', path: 'outings.0.legs.0.load.kind' });
    expect(problem.remedy).toContain('current, power, resistance');
  });

  test('the message carries title, value, unit and range', () => {
    const problem = problemOf(changed('options.0.pack.block.capacityAh', -5));
    expect(problem.problem).toBe('Rated capacity is -5 A·h.');
    expect(problem.remedy).toBe('Put a number above 0 up to 2000 A·h here.');
  });

  test('a number that is next to nothing is as bad as nothing where nothing is excluded', () => {
    const problem = problemOf(changed('options.0.pack.block.capacityAh', 1e-320));
    expect(problem.remedy).toBe('Put a number above 0 up to 2000 A·h here.');
    expect(readPlan(changed('options.0.pack.block.capacityAh', 1e-9)).ok).toBe(true);
  });

  test('a missing field is called missing', () => {
    const path = 'options.0.pack.block.capacityAh';
    expect(problemOf(changed(path, undefined))).toMatchObject({ code: 'missing', path });
  });

  test.each(['NaN', '-Infinity', 'Infinity', '1e999'])(
    'the number %s is named with its field',
    (word) => {
      const text = sampleText.replace('"capacityAh": 18', `"capacityAh": ${word}`);
      expect(problemOf(text)).toMatchObject({
        code: 'not-finite',
        path: 'options.0.pack.block.capacityAh',
      });
    },
  );

  test('messages come in German when asked', () => {
    const problem = problemOf(changed('options.0.pack.block.capacityAh', -5), 'de');
    expect(problem.remedy).toBe('Hier gehört eine Zahl über 0 bis 2000 A·h hin.');
  });
});

/** Rating points over one and twenty hours. */
const points = (quickAh: number, slowAh: number): unknown => ({
  kind: 'points',
  points: [
    { hours: 20, capacityAh: slowAh, endVoltageV: null },
    { hours: 1, capacityAh: quickAh, endVoltageV: null },
  ],
});

describe('fields that contradict each other', () => {
  test.each<[string, string, string, string, unknown]>([
    ['two options of one identifier', 'duplicate-id', 'options.1.id', 'options.1.id', 'agm-series'],
    [
      'two legs of one identifier',
      'duplicate-id',
      'outings.0.legs.1.id',
      'outings.0.legs.1.id',
      'start-loaded',
    ],
    [
      'a headline outing that is not there',
      'unknown-reference',
      'headlineOuting',
      'headlineOuting',
      'nowhere',
    ],
    [
      'a restart below the cutoff',
      'contradiction',
      'machine.controller.restartVoltageV',
      'machine.controller.restartVoltageV',
      20,
    ],
    [
      'a restart equal to the cutoff',
      'contradiction',
      'machine.controller.restartVoltageV',
      'machine.controller.restartVoltageV',
      20.5,
    ],
    [
      'a BMS window upside down',
      'contradiction',
      'options.1.pack.block.bms.groupHighV',
      'options.1.pack.block.bms.groupLowV',
      3.9,
    ],
    [
      'a float above the end voltage',
      'contradiction',
      'options.0.charger.endVoltageV',
      'options.0.charger.floatVoltageV',
      30,
    ],
    [
      'a difference at a block that is not there',
      'unknown-reference',
      'options.0.pack.differences.0.position',
      'options.0.pack.differences',
      [newDifference(1, 3)],
    ],
    [
      'rating points that fall with time',
      'contradiction',
      'options.0.pack.block.rating.points.0.capacityAh',
      'options.0.pack.block.rating',
      points(12, 10),
    ],
  ])('%s is refused', (_case, code, path, changedPath, value) => {
    expect(problemOf(changed(changedPath, value))).toMatchObject({ code, path });
  });

  test('rating points that stay level with time are read', () => {
    expect(readPlan(changed('options.0.pack.block.rating', points(18, 18))).ok).toBe(true);
  });
});

describe('a file that is read', () => {
  test('a byte order mark does not matter', () => {
    expect(readPlan(`\uFEFF${sampleText}`).ok).toBe(true);
  });

  test('fields the format does not know are left out and listed', () => {
    const result = readPlan(changed('machine.colour', 'green'));
    expect(result).toMatchObject({ ok: true, leftOut: ['machine.colour'] });
  });
});
