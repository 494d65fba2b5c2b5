import type { Option } from '#core/plan/schema/option.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { WiringBranch } from '#core/plan/schema/wiring-branch.ts';
import type { Wiring } from '#core/plan/schema/wiring.ts';
import { samplePlan, type SampleName } from '#core/plan/samples/index.ts';
import { runOuting } from '#core/run/run-outing.ts';
import type { RunResult } from '#core/run/result.ts';
import { studyWiring } from '#core/wiring/index.ts';
import type { WiringStudy } from '#core/wiring/index.ts';

export interface WiredSample {
  readonly plan: Plan;
  readonly option: Option;
  readonly wiring: Wiring;
  readonly run: RunResult;
  readonly ambientC: number;
  readonly study: WiringStudy;
}

/** A sample with its wiring changed and worked out for one option. */
export function wiredSample(
  name: SampleName,
  optionId: string,
  change: (plan: Plan, wiring: Wiring) => void = () => {},
): WiredSample {
  const plan = samplePlan(name);
  const wiring = plan.wiring!;
  change(plan, wiring);
  const option = plan.options.find((entry) => entry.id === optionId)!;
  const outing = plan.outings.find((entry) => entry.id === plan.headlineOuting)!;
  const run = runOuting(option, plan.machine, outing);
  const study = studyWiring(plan, wiring, option, run, outing.ambientC);
  return { plan, option, wiring, run, ambientC: outing.ambientC, study };
}

export function branchOf(wiring: Wiring, id: string): WiringBranch {
  return wiring.branches.find((branch) => branch.id === id)!;
}
