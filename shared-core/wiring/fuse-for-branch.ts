import type { Fuse } from '../plan/schema/wiring-branch.ts';
import { chooseFuse } from './choose-fuse.ts';
import type { BranchStudy, WiringStudy } from './wiring-study.ts';

/**
 * The fuse a branch asks for: carries its lasting current with margin and its hardest start, and breaks its fault.
 *
 * @param startS length of a start [s]
 * @param margin rating over lasting current [1]
 * @returns null where no class can
 */
export function fuseForBranch(
  branch: BranchStudy,
  study: WiringStudy,
  startS: number,
  margin: number,
): Fuse | null {
  return chooseFuse({
    continuousA: branch.continuousA,
    limitA: branch.states.start?.currentA ?? 0,
    startA: branch.peakA,
    startS,
    voltageV: study.highestVoltageV,
    faultA: branch.faultNearA,
    margin,
  });
}
