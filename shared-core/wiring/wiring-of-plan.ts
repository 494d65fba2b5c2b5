import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { RunResult } from '../run/result.ts';
import { studyWiring } from './study-wiring.ts';
import type { WiringStudy } from './wiring-study.ts';

/**
 * Several rules, the screen and the sheet ask for the same study; it is worked out once for each run. It stands as long
 * as the parts of the plan it reads are the same objects.
 */
const known = new WeakMap<RunResult, { read: readonly unknown[]; study: WiringStudy }>();

/** The wiring of a plan worked out for one option; null where the plan has none. */
export function wiringOfPlan(
  plan: Plan,
  option: Option,
  run: RunResult,
  ambientC: number,
): WiringStudy | null {
  if (plan.wiring === null) return null;
  const { machine, thresholds, wiring } = plan;
  const read = [machine, thresholds, wiring, option, ambientC];
  const before = known.get(run);
  if (before !== undefined && read.every((part, index) => part === before.read[index]))
    return before.study;
  const study = studyWiring({ machine, thresholds }, wiring, option, run, ambientC);
  known.set(run, { read, study });
  return study;
}
