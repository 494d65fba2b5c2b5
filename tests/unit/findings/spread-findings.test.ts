import { expect, test } from 'vitest';
import { spreadPlan } from '#core/compare/spread/spread-plan.ts';
import { spreadFindings } from '#core/findings/spread-findings.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { studyPlan } from '#core/study/study-plan.ts';

const plan = samplePlan('orchard-cart');
const { options } = studyPlan(plan);
const wishes = { caseCount: 60, seed: 1 };

const withGoal = (goalMin: number) => {
  const changed = {
    ...plan,
    outings: plan.outings.map((outing) =>
      outing.id === plan.headlineOuting ? { ...outing, goalMin } : outing,
    ),
  };
  return spreadFindings(changed, options, spreadPlan(changed, wishes));
};

test('a goal between the low and the likely run time is a note with both figures, and no other option is named', () => {
  const spread = spreadPlan(plan, wishes);
  const [first] = spread.options;
  const goalMin = (first!.low.value + options[0]!.run.runTimeMin) / 2;
  const notes = withGoal(goalMin);
  expect(notes.map(({ id, severity, optionId }) => [id, severity, optionId])).toEqual([
    ['RUN-1', 'note', first!.id],
  ]);
  expect(notes[0]!.facts.map(({ value }) => value)).toContain(first!.low.value);
});

test('nothing is noted where even the low run time reaches the goal, or where the likely one falls short anyway', () => {
  expect(withGoal(10)).toEqual([]);
  expect(withGoal(600)).toEqual([]);
});
