import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Wiring } from '../plan/schema/wiring.ts';
import type { RunResult } from '../run/result.ts';
import { fuseForBranch } from './fuse-for-branch.ts';
import { studyWiring } from './study-wiring.ts';

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
  const { startSeconds } = wiring;
  const { fuseMargin } = plan.thresholds.wiring;
  const first = studyWiring(plan, wiring, option, run, ambientC);
  const withFuses: Wiring = {
    ...wiring,
    branches: wiring.branches.map((branch) => {
      const study = first.branches.find((candidate) => candidate.id === branch.id);
      if (branch.fuse === null || study === undefined) return branch;
      return {
        ...branch,
        fuse: fuseForBranch(study, first, startSeconds, fuseMargin) ?? branch.fuse,
      };
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
