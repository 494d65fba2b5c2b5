import type { Plan } from '../../plan/schema/plan.ts';
import type { UncertainInput } from '../inputs/input.ts';
import { uncertainInputs } from '../inputs/uncertain-inputs.ts';
import type { OwnRanges } from '../inputs/uncertain-inputs.ts';
import { outingOf, quickRun, scenarioOf } from '../scenario.ts';

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

/**
 * How far each assumption moves the run time of each option: one at a time, from low to high. The shares add squared
 * swings, which holds where effects add up (derived).
 */
export function planSensitivity(
  plan: Plan,
  outingId?: string,
  ranges: OwnRanges = {},
): OptionSensitivity[] {
  const outing = outingOf(plan, outingId);
  return plan.options.map((option) => {
    const scenario = scenarioOf(plan, option, outing);
    const plannedMin = quickRun(scenario).runTimeMin;
    const tried = uncertainInputs(plan, scenario, ranges).map(({ apply, ...input }) => {
      const atLowMin = quickRun(apply(scenario, input.low)).runTimeMin;
      const atHighMin = quickRun(apply(scenario, input.high)).runTimeMin;
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
    return {
      id: option.id,
      name: option.name,
      plannedMin,
      effects,
      measureFirst:
        first === undefined
          ? null
          : {
              id: first.id,
              leftPercent: 100 * Math.sqrt(Math.max(0, 1 - first.sharePercent / 100)),
            },
    };
  });
}
