import { expect, test } from 'vitest';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { createRepeatedStudy } from '#core/study/study-again.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import type { PlanStudy } from '#core/study/study.ts';

/** Figures and columns in one text: quicker to compare than the columns are. */
const written = (study: PlanStudy): string =>
  JSON.stringify(study, (_, value: unknown) =>
    ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value,
  );

/** A copy, as it arrives in a worker, with one thing changed. */
const changed = (plan: Plan, change: (plan: Plan) => void): Plan => {
  const copy = structuredClone(plan);
  change(copy);
  return copy;
};

test.each([
  ['orchard-cart', ['en', 'de'], 9],
  ['campsite-tug', ['en'], 3],
] as const)(
  'edits of %s one after another give what a fresh study of each gives',
  (name, languages, count) => {
    const again = createRepeatedStudy();
    const first = samplePlan(name);
    const edits: ((plan: Plan) => void)[] = [
      () => {},
      (plan) => (plan.options[0]!.pack.block.capacityAh *= 1.1),
      (plan) => (plan.machine.harnessResistanceOhm += 0.002),
      (plan) => (plan.outings[0]!.ambientC -= 5),
      (plan) => (plan.thresholds.wiring.fuseMargin += 0.1),
      (plan) => (plan.options = plan.options.toReversed()),
      (plan) => (plan.options[0]!.charger = null),
      (plan) => plan.options.pop(),
      (plan) => (plan.wiring = null),
    ];
    let plan = first;
    for (const edit of edits.slice(0, count)) {
      plan = changed(plan, edit);
      for (const language of languages) {
        const fresh = studyPlan(plan, plan.headlineOuting, language);
        expect(written(again(plan, plan.headlineOuting, language)) === written(fresh)).toBe(true);
      }
    }
  },
);

test('an edit of one option runs no other again, one of the machine runs all', () => {
  const again = createRepeatedStudy();
  const plan = samplePlan('orchard-cart');
  const before = again(plan).options;
  const one = changed(plan, (copy) => (copy.options[1]!.pack.block.capacityAh += 1));
  const after = again(one).options;
  expect(after.map((study, index) => study === before[index])).toEqual([true, false, true]);
  const all = changed(one, (copy) => (copy.machine.harnessResistanceOhm += 0.001));
  expect(again(all).options.some((study, index) => study === after[index])).toBe(false);
});
