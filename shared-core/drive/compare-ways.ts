import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { runOuting } from '../run/run-outing.ts';
import { loadWays, outingInWay } from './load-ways.ts';
import type { LoadWay } from './load-ways.ts';

/** One way of giving the load, run on one option. */
export interface WayRun {
  readonly optionId: string;
  /** Until the run ends; null where this way cannot be computed for the option. */
  readonly runTimeMin: number | null;
  /** Of one round for the motors, accessories off [A]. */
  readonly averageA: number | null;
  readonly peakA: number | null;
}

export interface WayRow {
  readonly way: LoadWay;
  readonly known: number;
  readonly of: number;
  readonly runs: readonly WayRun[];
}

/** Minutes of one round of the outing's legs [min]; the shortest run allowed is one minute. */
function roundMin({ legs }: Outing): number {
  return Math.max(
    1,
    legs.reduce((sum, leg) => sum + leg.durationMin, 0),
  );
}

/** One round from full without accessories: what a clamp meter on the motor line would read. */
export function oneRound(
  machine: Machine,
  option: Option,
  outing: Outing,
): { readonly averageA: number; readonly peakA: number } | null {
  const round = { ...outing, longestMin: roundMin(outing), restAfterMin: 0 };
  const run = runOuting(option, machine, round, { accessories: false, full: false });
  if (run.endedBy === 'not-computable' || run.runTimeMin === 0) return null;
  return { averageA: run.averageCurrentA, peakA: run.peakCurrentA };
}

/**
 * The same outing by amps, by log and by the motor model, side by side. Ways no leg is known in are left out; legs not
 * known in a way keep the load that counts, and the row says how many are.
 */
export function compareWays(
  machine: Machine,
  options: readonly Option[],
  outing: Outing,
): WayRow[] {
  return loadWays.flatMap((way) => {
    const { outing: taken, known, of } = outingInWay(outing, way);
    if (known === 0) return [];
    const runs = options.map((option): WayRun => {
      const run = runOuting(option, machine, taken, { full: false });
      const round = oneRound(machine, option, taken);
      return {
        optionId: option.id,
        runTimeMin: run.endedBy === 'not-computable' ? null : run.runTimeMin,
        averageA: round?.averageA ?? null,
        peakA: round?.peakA ?? null,
      };
    });
    return [{ way, known, of, runs }];
  });
}
