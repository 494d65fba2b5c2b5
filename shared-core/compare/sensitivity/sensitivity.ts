import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import type { UncertainInput } from '../inputs/input.ts';
import { uncertainInputs } from '../inputs/uncertain-inputs.ts';
import type { OwnRanges } from '../inputs/uncertain-inputs.ts';
import { outingOf, quickRun, scenarioOf } from '../scenario.ts';
import type { Scenario } from '../scenario.ts';

/** What one assumption does to the run time of an option, the others at their likely values. */
export interface InputEffect extends Omit<UncertainInput, 'apply'> {
  readonly atLowMin: number;
  readonly atHighMin: number;
  /** Longest less shortest run over low, likely and high [min]. */
  readonly swingMin: number;
  /** Minutes per unit of the input, from low to high; null where the range has no width. */
  readonly minutesPerUnit: number | null;
  /** Share of the squared swings [%]. */
  readonly sharePercent: number;
}

export interface OptionSensitivity {
  readonly id: string;
  readonly name: string;
  readonly plannedMin: number;
  /** Widest swing first. */
  readonly effects: readonly InputEffect[];
  /** The measurable input with the widest swing, and what is left of the width once it is known [%]. */
  readonly measureFirst: {
    readonly id: UncertainInput['id'];
    readonly leftPercent: number;
  } | null;
}

/** What is asked of a sensitivity. */
export interface SensitivityWishes {
  readonly outingId?: string;
  readonly ranges?: OwnRanges;
}

/** An option with the runs its sensitivity needs: the plan itself, then each input at low and at high. */
export interface SensitivityTrial {
  readonly inputs: readonly UncertainInput[];
  readonly scenarios: readonly Scenario[];
}

/** Lays out the runs of every option, in the order of the plan. */
export function sensitivityTrials(plan: Plan, wishes: SensitivityWishes): SensitivityTrial[] {
  const outing = outingOf(plan, wishes.outingId);
  return plan.options.map((option) => {
    const scenario = scenarioOf(plan, option, outing);
    const inputs = uncertainInputs(plan, scenario, wishes.ranges);
    const tried = inputs.flatMap(({ apply, low, high }) => [
      apply(scenario, low),
      apply(scenario, high),
    ]);
    return { inputs, scenarios: [scenario, ...tried] };
  });
}

/** Runs `from` to `to` (without `to`) of all runs in their order [min]: the piece of work of one worker. */
export function sensitivityPart(
  trials: readonly SensitivityTrial[],
  from: number,
  to: number,
): Float64Array {
  const scenarios = trials.flatMap((trial) => trial.scenarios).slice(from, to);
  return Float64Array.from(scenarios, (scenario) => quickRun(scenario).runTimeMin);
}

/**
 * How far each assumption moves the run time of each option: one at a time, from low to high. The shares add squared
 * swings, which holds where effects add up (derived).
 *
 * @param minutes run times of all runs, in the order of the trials
 */
export function summariseSensitivity(
  plan: Plan,
  trials: readonly SensitivityTrial[],
  minutes: Float64Array,
): OptionSensitivity[] {
  let next = 0;
  return plan.options.map((option, place) => {
    const { inputs, scenarios } = trials[place]!;
    const times = minutes.subarray(next, next + scenarios.length);
    next += scenarios.length;
    return optionSensitivity(option, inputs, times);
  });
}

function optionSensitivity(
  { id, name }: Option,
  inputs: readonly UncertainInput[],
  minutes: Float64Array,
): OptionSensitivity {
  const plannedMin = minutes[0]!;
  const tried = inputs.map(({ apply: _apply, ...input }, place) => {
    const atLowMin = minutes[1 + 2 * place]!;
    const atHighMin = minutes[2 + 2 * place]!;
    const swingMin =
      Math.max(atLowMin, plannedMin, atHighMin) - Math.min(atLowMin, plannedMin, atHighMin);
    const width = input.high - input.low;
    const minutesPerUnit = width > 0 ? (atHighMin - atLowMin) / width : null;
    return { ...input, atLowMin, atHighMin, swingMin, minutesPerUnit };
  });
  const whole = tried.reduce((sum, { swingMin }) => sum + swingMin ** 2, 0);
  const effects = tried
    .map((entry) => ({
      ...entry,
      sharePercent: whole > 0 ? (100 * entry.swingMin ** 2) / whole : 0,
    }))
    .toSorted((one, other) => other.swingMin - one.swingMin);
  const first = effects.find(({ measure, swingMin }) => measure !== null && swingMin > 0);
  const leftShare = first === undefined ? 1 : 1 - first.sharePercent / 100;
  return {
    id,
    name,
    plannedMin,
    effects,
    measureFirst:
      first === undefined
        ? null
        : { id: first.id, leftPercent: 100 * Math.sqrt(Math.max(0, leftShare)) },
  };
}

/** The sensitivity of every option of a plan, in one go. */
export function planSensitivity(
  plan: Plan,
  outingId?: string,
  ranges: OwnRanges = {},
): OptionSensitivity[] {
  const trials = sensitivityTrials(plan, {
    ranges,
    ...(outingId === undefined ? {} : { outingId }),
  });
  const count = trials.reduce((sum, { scenarios }) => sum + scenarios.length, 0);
  return summariseSensitivity(plan, trials, sensitivityPart(trials, 0, count));
}
