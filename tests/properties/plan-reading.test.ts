import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readPlan } from '#core/plan/read-plan.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { valueAt } from '#core/plan/value-at.ts';
import { writePlan } from '#core/plan/write-plan.ts';

// fast-check prints seed and path of a failure, so that it can be replayed.
const text = writePlan(samplePlan('orchard-cart'));

/** Every path of the sample that holds a value. */
function pathsOf(value: unknown, path: readonly string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [[...path]];
  return [
    [...path],
    ...Object.entries(value).flatMap(([key, entry]) => pathsOf(entry, [...path, key])),
  ];
}

const paths = pathsOf(JSON.parse(text)).filter((path) => path.length > 0);

/** A text is read, or refused with words; a plan that was read holds finite numbers and reads back as itself. */
function expectResultOrProblem(given: string): void {
  const result = readPlan(given);
  if (!result.ok) {
    expect(result.problem.problem).not.toBe('');
    expect(result.problem.remedy).not.toBe('');
    return;
  }
  const again = readPlan(writePlan(result.plan));
  expect(again).toMatchObject({ ok: true, plan: result.plan });
}

test('a plan with any one value replaced by anything is read or refused with words', () => {
  fc.assert(
    fc.property(fc.constantFrom(...paths), fc.jsonValue({ maxDepth: 3 }), (path, value) => {
      const plan = JSON.parse(text) as unknown;
      const parent = valueAt(plan, path.slice(0, -1)) as Record<string, unknown>;
      parent[path.at(-1)!] = value;
      expectResultOrProblem(JSON.stringify(plan));
    }),
    { numRuns: 1500 },
  );
});

test('a text with any stretch replaced is read or refused with words', () => {
  fc.assert(
    fc.property(
      fc.nat(text.length),
      fc.nat(40),
      fc.oneof(
        fc.string({ maxLength: 20 }),
        fc.constantFrom('NaN', '-Infinity', '1e999', '{', ']', '"', '\\', '\u0000'),
      ),
      (start, length, replacement) => {
        expectResultOrProblem(text.slice(0, start) + replacement + text.slice(start + length));
      },
    ),
    { numRuns: 1500 },
  );
});

test('any text at all is read or refused with words', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string({ maxLength: 200 }), fc.json({ maxDepth: 6 })),
      expectResultOrProblem,
    ),
    { numRuns: 1500 },
  );
});
