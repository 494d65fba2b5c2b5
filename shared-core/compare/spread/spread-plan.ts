import type { Plan } from '../../plan/schema/plan.ts';
import type { EndCause } from '../../run/result.ts';
import type { UncertainInput } from '../inputs/input.ts';
import { uncertainInputs } from '../inputs/uncertain-inputs.ts';
import { valueAt } from '../inputs/value-at.ts';
import { outingOf, quickRun, scenarioOf } from '../scenario.ts';
import type { Scenario } from '../scenario.ts';
import { defaultSpreadWishes, type SpreadWishes } from './spread-wishes.ts';
import { latinColumn } from './latin-sample.ts';
import type { PlanSpread, SpreadPart } from './spread.ts';
import { summariseSpread } from './summarise-spread.ts';

/** An option with its inputs and the sample of each: any row can be run by itself, in any order, by any worker. */
export interface SampledOption {
  readonly scenario: Scenario;
  readonly inputs: readonly UncertainInput[];
  readonly columns: readonly Float64Array[];
}

/** Lays out the sample for every option of a plan. Inputs with the same key share their column. */
export function sampleOptions(plan: Plan, wishes: SpreadWishes): SampledOption[] {
  const outing = outingOf(plan, wishes.outingId);
  const columns = new Map<string, Float64Array>();
  const columnOf = (key: string): Float64Array => {
    const known = columns.get(key) ?? latinColumn(key, wishes.caseCount, wishes.seed);
    columns.set(key, known);
    return known;
  };
  return plan.options.map((option) => {
    const scenario = scenarioOf(plan, option, outing);
    const inputs = uncertainInputs(plan, scenario, wishes.ranges);
    return { scenario, inputs, columns: inputs.map(({ key }) => columnOf(key)) };
  });
}

/**
 * The scenario of one case: every input at its value in that row. The row after the last one is the plan itself, every
 * input at its likely value.
 */
export function caseScenario({ scenario, inputs, columns }: SampledOption, row: number): Scenario {
  let changed = scenario;
  inputs.forEach((input, place) => {
    const deviate = columns[place]![row];
    if (deviate !== undefined) changed = input.apply(changed, valueAt(input, deviate));
  });
  return changed;
}

/** Rows to be run: the cases, and the plan itself after them. */
export const spreadRows = ({ caseCount }: SpreadWishes): number => caseCount + 1;

/** Runs the rows `from` to `to` (without `to`) of every option: the piece of work of one worker. */
export function spreadPart(
  sampled: readonly SampledOption[],
  from: number,
  to: number,
): SpreadPart {
  const runTimeMin = sampled.map(() => new Float64Array(to - from));
  const endedBy = sampled.map((): EndCause[] => []);
  sampled.forEach((option, place) => {
    for (let row = from; row < to; row += 1) {
      const run = quickRun(caseScenario(option, row));
      runTimeMin[place]![row - from] = run.runTimeMin;
      endedBy[place]!.push(run.endedBy);
    }
  });
  return { from, to, runTimeMin, endedBy };
}

/**
 * Low, likely and high run time of every option, the chance of meeting the goal, and how the options compare case by
 * case: each case draws weather, load and machine once for all options, and each type of block once for all that use it.
 */
export function spreadPlan(plan: Plan, wishes: SpreadWishes = defaultSpreadWishes): PlanSpread {
  const sampled = sampleOptions(plan, wishes);
  return summariseSpread(plan, wishes, [spreadPart(sampled, 0, spreadRows(wishes))]);
}
