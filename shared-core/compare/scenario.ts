import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { nominalVoltageV } from '../pack/nominal-voltage.ts';
import { runOuting } from '../run/run-outing.ts';
import { needsOutingSource } from '../drive/outing-source.ts';
import type { RunResult } from '../run/result.ts';

/** One option on one outing: what an assumption may change. */
export interface Scenario {
  readonly option: Option;
  readonly machine: Machine;
  readonly outing: Outing;
}

export function scenarioOf(plan: Plan, option: Option, outing: Outing): Scenario {
  return { option, machine: plan.machine, outing };
}

/** The outing asked for; the headline outing where none or an unknown one is named. */
export function outingOf(plan: Plan, outingId?: string): Outing {
  return (
    plan.outings.find(({ id }) => id === outingId) ??
    plan.outings.find(({ id }) => id === plan.headlineOuting) ??
    plan.outings[0]!
  );
}

/** Bus movement allowed per step, per volt of nominal pack voltage, where thousands of runs are made. */
const quickToleranceShare = 0.02 / 24;

/**
 * Runs a scenario for its figures only: without series, without the try after a rest, and, where no leg is driven, with
 * steps twice as long as on screen (within 0.1 % of the run time on the sample plans).
 */
export function quickRun({ option, machine, outing }: Scenario): RunResult {
  const trial = outing.restAfterMin === 0 ? outing : { ...outing, restAfterMin: 0 };
  return runOuting(option, machine, trial, {
    full: false,
    ...(needsOutingSource(outing)
      ? {}
      : {
          stepping: {
            kind: 'adaptive',
            toleranceV: quickToleranceShare * nominalVoltageV(option),
          } as const,
        }),
  });
}

/** Runs a scenario with its series, without the try after a rest: for what is drawn over time. */
export function fullRun({ option, machine, outing }: Scenario): RunResult {
  return runOuting(option, machine, { ...outing, restAfterMin: 0 });
}
