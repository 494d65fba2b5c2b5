import { expect, test } from 'vitest';
import { checkPlan } from '#core/plan/read-plan.ts';
import { startPlan, type StartAnswers } from '#core/plan/start-plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';

const answers: StartAnswers = {
  name: 'Hay wagon',
  nominalV: 24,
  drivingPowerW: 200,
  drivingPercent: 60,
  goalMin: 60,
  ambientC: 15,
  accessoryW: 20,
  cutoffVoltageV: null,
};

test.each([12, 24, 36, 48])(
  'answers for a machine of %s V give a plan without contradiction',
  (nominalV) => {
    const plan = startPlan({ ...answers, nominalV });
    expect(checkPlan(plan)).toMatchObject({ ok: true });
    expect(plan.options.length).toBe(2);
  },
);

test('the packs proposed reach the goal', () => {
  const plan = startPlan(answers);
  for (const { run } of studyPlan(plan).options) expect(run.runTimeMin).toBeGreaterThanOrEqual(60);
});

test('each pack gets a charger made for it', () => {
  for (const { chargerMatch } of studyPlan(startPlan(answers)).options) {
    expect(chargerMatch?.verdict).not.toBe('misfits');
  }
});

test('a machine that never stands has one leg', () => {
  const plan = startPlan({ ...answers, drivingPercent: 100 });
  expect(plan.outings[0]?.legs).toHaveLength(1);
});

test('no accessories means no converter', () => {
  const plan = startPlan({ ...answers, accessoryW: 0 });
  expect(plan.machine.converter).toBeNull();
  expect(plan.machine.accessories).toEqual([]);
});

test('the largest answers still give a valid plan', () => {
  const plan = startPlan({ ...answers, drivingPowerW: 20_000, goalMin: 1440, accessoryW: 2000 });
  expect(checkPlan(plan)).toMatchObject({ ok: true });
});
