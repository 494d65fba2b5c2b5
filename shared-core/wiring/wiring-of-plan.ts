import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { RunResult } from '../run/result.ts';
import { studyWiring } from './study-wiring.ts';
import type { WiringStudy } from './wiring-study.ts';

/** Several rules, the screen and the sheet ask for the same study; it is worked out once for each run. */
const known = new WeakMap<RunResult, { plan: Plan; study: WiringStudy }>();

/** The wiring of a plan worked out for one option; null where the plan has none. */
export function wiringOfPlan(
  plan: Plan,
  option: Option,
  run: RunResult,
  ambientC: number,
): WiringStudy | null {
  if (plan.wiring === null) return null;
  const before = known.get(run);
  if (before !== undefined && before.plan === plan && before.study.optionId === option.id)
    return before.study;
  const study = studyWiring(plan, plan.wiring, option, run, ambientC);
  known.set(run, { plan, study });
  return study;
}
