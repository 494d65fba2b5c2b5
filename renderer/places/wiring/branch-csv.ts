import type { CsvTable } from '../../charts/csv.ts';
import { formatConductor, wiringStates, type WiringStudy } from '#core/wiring/index.ts';

/** Every branch with its figures in every state as CSV: one row a branch, units in the heads, full precision. */
export function branchCsv(wired: WiringStudy): CsvTable {
  const states = wiringStates.filter(
    (state) => state === 'short-circuit' || wired.states[state] !== null,
  );
  return {
    fields: [
      'branch',
      'conductor',
      'ampacityA',
      'fuseA',
      'smallest',
      ...states.flatMap((state) => [`${state} currentA`, `${state} dropV`]),
    ],
    data: wired.branches.map((branch) => [
      branch.name,
      formatConductor(branch.conductor, 'en'),
      branch.ampacityA,
      branch.guard?.fuse.ratedA ?? '',
      branch.smallest.conductor === null ? '' : formatConductor(branch.smallest.conductor, 'en'),
      ...states.flatMap((state) => {
        const at = branch.states[state];
        return at === undefined
          ? ['', '']
          : [at.currentA, state === 'short-circuit' ? '' : at.dropV];
      }),
    ]),
  };
}
