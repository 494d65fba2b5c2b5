import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Fuse } from '../plan/schema/wiring-branch.ts';
import type { Wiring } from '../plan/schema/wiring.ts';
import type { RunResult } from '../run/result.ts';
import { chooseFuse } from './choose-fuse.ts';
import { studyWiring } from './study-wiring.ts';
import type { BranchStudy, WiringStudy } from './wiring-study.ts';

/**
 * Gives every fused branch a fuse and every branch without a stated wire the smallest one that passes.
 * Fuses come first, because a wire must stand its fuse.
 */
export function sizeWiring(
  plan: Plan,
  wiring: Wiring,
  option: Option,
  run: RunResult,
  ambientC: number,
): Wiring {
  const first = studyWiring(plan, wiring, option, run, ambientC);
  const withFuses: Wiring = {
    ...wiring,
    branches: wiring.branches.map((branch) => {
      const study = first.branches.find((candidate) => candidate.id === branch.id);
      if (branch.fuse === null || study === undefined) return branch;
      return { ...branch, fuse: fuseFor(branch.fuse, study, first, wiring, plan) };
    }),
  };
  const second = studyWiring(plan, withFuses, option, run, ambientC);
  return {
    ...withFuses,
    branches: withFuses.branches.map((branch) => ({
      ...branch,
      conductor:
        branch.conductor ??
        second.branches.find((candidate) => candidate.id === branch.id)?.smallest.conductor ??
        null,
    })),
  };
}

function fuseFor(
  present: Fuse,
  study: BranchStudy,
  all: WiringStudy,
  wiring: Wiring,
  plan: Plan,
): Fuse {
  const proposal = chooseFuse({
    continuousA: study.continuousA,
    limitA: study.states.start?.currentA ?? 0,
    startA: study.peakA,
    startS: wiring.startSeconds,
    voltageV: all.highestVoltageV,
    faultA: study.faultNearA,
    margin: plan.thresholds.wiring.fuseMargin,
  });
  return proposal ?? present;
}
