import { expect, test } from 'vitest';
import { defaultSpreadWishes } from '#core/compare/spread/spread-wishes.ts';
import { spreadPlan } from '#core/compare/spread/spread-plan.ts';
import { spreadFindings } from '#core/findings/spread-findings.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { command } from '../headless/memory-host.ts';

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

test('the verb gives that note with --spread, word for word as the window does, and without it no such note', async () => {
  const whole = spreadPlan(plan, defaultSpreadWishes);
  const goalMin = Math.round((whole.options[0]!.low.value + options[0]!.run.runTimeMin) / 2);
  const changed = {
    ...plan,
    outings: plan.outings.map((outing) =>
      outing.id === plan.headlineOuting ? { ...outing, goalMin } : outing,
    ),
  };
  const window = spreadFindings(changed, options, spreadPlan(changed, defaultSpreadWishes));
  const files = { plan: writePlan(changed) };
  const read = async (...more: string[]) => {
    const { out } = await command(['findings', 'plan', '--json', ...more], files);
    const { findings } = JSON.parse(out) as { findings: { id: string; what: string }[] };
    return findings.filter(({ id }) => id === 'RUN-1').map(({ what }) => what);
  };
  expect(await read('--spread')).toContain(window[0]!.what);
  expect(await read()).not.toContain(window[0]!.what);
});
