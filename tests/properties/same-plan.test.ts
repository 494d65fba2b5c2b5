import { describe, expect, test } from 'vitest';
import { spreadPlan } from '#core/compare/spread/spread-plan.ts';
import { readPlan } from '#core/plan/read-plan.ts';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { studyCharging } from '#core/study/study-charging.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { prefillWiring, studyWiring, wiringRecord } from '#core/wiring/index.ts';
import { forRandomPlans } from '../support/random-plans.ts';

/** Fields whose value is a word of the reader, or a sentence made with it. */
const worded = new Set(['name', 'note', 'label', 'text', 'what', 'consequence', 'remedy']);

/** A result without the reader's words and without places in the plan, as plain lists and numbers. */
function figures(value: unknown): unknown {
  if (ArrayBuffer.isView(value)) return [...(value as unknown as Iterable<number>)];
  if (Array.isArray(value)) return value.map(figures);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => !worded.has(key) && key !== 'fields' && key !== 'cures')
      .map(([key, child]) => [key, figures(child)]),
  );
}

/** Everything worked out of a plan, by the identifier of the option it belongs to. */
function workedOut(plan: Plan) {
  const study = studyPlan(plan);
  const outing = plan.outings.find(({ id }) => id === study.outingId)!;
  const charging = studyCharging(
    plan,
    study.outingId,
    study.options.map(({ run }) => run),
  );
  const byOption = plan.options.map((option, index) => {
    const { run } = study.options[index]!;
    const wiring = plan.wiring ?? prefillWiring(plan, option, run, outing.ambientC);
    const wires = studyWiring(plan, wiring, option, run, outing.ambientC);
    const { chargers: _listed, ...charged } = charging.options[index]!;
    return [
      option.id,
      figures([study.options[index], charged, JSON.parse(JSON.stringify(wiringRecord(wires)))]),
    ] as const;
  });
  const findings = [...study.findings, ...charging.findings];
  return { options: Object.fromEntries(byOption), findings };
}

type Findings = ReturnType<typeof workedOut>['findings'];

/** Findings as a set: which rule, of which option, on which numbers. */
const stated = (findings: Findings): readonly string[] =>
  findings
    .map(({ id, optionId, status, severity, facts }) =>
      JSON.stringify([id, optionId, status, severity, facts.map(({ value }) => value)]),
    )
    .toSorted();

/** The same value with every name and note of the reader put into other words. */
function reworded<T>(value: T): T {
  if (Array.isArray(value)) return value.map(reworded) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, child]) => [
      key,
      (key === 'name' || key === 'note') && typeof child === 'string'
        ? `Anders ${child.length}`
        : reworded(child as unknown),
    ]),
  ) as T;
}

const turnedRound = (plan: Plan): Plan => ({
  ...plan,
  options: plan.options.toReversed(),
  outings: plan.outings.toReversed(),
});

const copyId = 'the-same-again';

/** The first option a second time, at the end. */
const doubled = (plan: Plan): Plan => ({
  ...plan,
  options: [...plan.options, { ...plan.options[0]!, id: copyId }],
});

/** The same value with one identifier in place of another. */
function withId(value: unknown, from: string, to: string): unknown {
  if (value === from) return to;
  if (Array.isArray(value)) return value.map((child) => withId(child, from, to));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, child]) => [key, withId(child, from, to)]),
  );
}

/** Keys of every object the other way round, as another program might write the file. */
function keysTurned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(keysTurned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .toReversed()
      .map(([key, child]) => [key, keysTurned(child)]),
  );
}

function reread(text: string): Plan {
  const read = readPlan(text);
  if (!read.ok) throw new Error(read.problem.problem);
  return read.plan;
}

function expectSame(plan: Plan): void {
  const before = workedOut(plan);

  const otherwise = workedOut(reworded(turnedRound(doubled(plan))));
  const { [copyId]: copy, ...rest } = otherwise.options;
  expect(rest).toEqual(before.options);
  const first = plan.options[0]!.id;
  expect(copy).toEqual(withId(before.options[first], first, copyId));
  expect(stated(otherwise.findings.filter(({ optionId }) => optionId !== copyId))).toEqual(
    stated(before.findings),
  );

  const asWritten = JSON.stringify(keysTurned(JSON.parse(writePlan(plan))));
  expect(workedOut(reread(asWritten))).toEqual(before);
}

describe('a plan with other names, in another order, with an option twice, written and read again', () => {
  test.each(sampleNames)('gives the same figures for the sample %s', (name) => {
    expectSame(samplePlan(name));
  });

  test('gives the same figures for random plans', () => {
    forRandomPlans(5_000, expectSame);
  });

  test('has the same spread for an option wherever it stands', () => {
    const plan = samplePlan('orchard-cart');
    const wishes = { caseCount: 30, seed: 5 };
    const of = (given: Plan) =>
      Object.fromEntries(
        spreadPlan(given, wishes).options.map((option) => {
          // The classes of the histogram are common to all options.
          const { id, name: _name, histogram: _histogram, ...rest } = option;
          return [id, rest];
        }),
      );
    const before = of(plan);
    expect(of(turnedRound(plan))).toEqual(before);
    expect(of(doubled(plan))).toMatchObject(before);
  });
});
