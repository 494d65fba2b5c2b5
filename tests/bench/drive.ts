import { libraryBlock } from '#core/library/index.ts';
import { newOption, newPack } from '#core/plan/defaults.ts';
import { runOuting } from '#core/run/run-outing.ts';
import { bareMachine, driveLeg, driveLoad, driveOuting } from '../support/drive-plan.ts';
import { rateRow, type BenchRow } from './row.ts';
import { timed } from './timed.ts';

/** Two blocks large enough that two hours of stop and go do not empty them. */
const option = newOption([], newPack(libraryBlock('agm-12v-100ah'), 2), 'bench');
const machine = bareMachine();

/** Two hours of driven legs, each start with its transient, peak current and sag. */
export function benchDrive(): BenchRow[] {
  return [1, 2].flatMap((startsPerMinute) => {
    const load = driveLoad({
      command: { kind: 'speed', targetSpeedKmh: 7 },
      starts: startsPerMinute,
      haltS: 6,
    });
    const outing = driveOuting([driveLeg(load)], { longestMin: 120 });
    const run = (full: boolean) => timed(() => runOuting(option, machine, outing, { full }), 20);
    const what = `2 h outing, ${120 * startsPerMinute} starts`;
    return [
      rateRow(`${what}, figures only`, run(false)),
      rateRow(`${what}, with series and ledger`, run(true)),
    ];
  });
}
