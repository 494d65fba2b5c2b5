import { expect, test } from 'vitest';
import { quickRun, scenarioOf } from '#core/compare/scenario.ts';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { runOuting } from '#core/run/run-outing.ts';

test.each(sampleNames)('a quick run of %s lasts as long as the run on screen', (name) => {
  const plan = samplePlan(name);
  for (const option of plan.options) {
    for (const outing of plan.outings) {
      const shown = runOuting(option, plan.machine, outing).runTimeMin;
      const quick = quickRun(scenarioOf(plan, option, outing)).runTimeMin;
      expect(Math.abs(quick / shown - 1), `${option.id} ${outing.id}`).toBeLessThan(0.001);
    }
  }
});
