import { fuseClasses } from './fuse-classes.ts';
import { wiringStates } from './states.ts';
import type { BranchStudy, WiringStudy } from './wiring-study.ts';

/** A wiring study as plain data for JSON: no graph, no typed arrays. */
export function wiringRecord(study: WiringStudy) {
  const { supply, demand } = study;
  return {
    packFullVoltageV: supply.fullV,
    packResistanceOhm: (supply.stringOhm + supply.linkOhm) / supply.stringCount,
    highestVoltageV: study.highestVoltageV,
    harnessOhm: study.harnessOhm,
    motorCircuitOhm: demand.motorOhm,
    runawayA: demand.runawayA,
    states: wiringStates,
    branches: study.branches.map(branchRecord),
  };
}

function branchRecord(branch: BranchStudy) {
  const { guard, planIndex: _planIndex, ...rest } = branch;
  return {
    ...rest,
    fuse:
      guard === null
        ? null
        : {
            class: guard.fuse.class,
            ratedA: guard.fuse.ratedA,
            sitsInBranch: guard.branchIndex,
            gatesFrom: fuseClasses[guard.fuse.class].source,
          },
  };
}
