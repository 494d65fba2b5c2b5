import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Controller } from '../plan/schema/controller.ts';
import type { Outing } from '../plan/schema/outing.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { OptionStudy } from '../study/study.ts';

/** An option with everything a rule may ask about it. */
export interface OptionContext {
  readonly option: Option;
  /** Path of the option in the plan, e.g. `options.0`. */
  readonly path: string;
  /** The controller that works with this option, and the path of its fields. */
  readonly controller: Controller;
  readonly controllerPath: string;
  /** Null where the option was not run. */
  readonly study: OptionStudy | null;
}

/** Everything a rule may look at. */
export interface FindingContext {
  readonly plan: Plan;
  /** Outing the studies belong to. */
  readonly outing: Outing;
  readonly options: readonly OptionContext[];
  readonly language: Language;
}

/** Puts plan and studies side by side. An outing that is not in the plan falls back to the headline outing. */
export function findingContext(
  plan: Plan,
  studies: readonly OptionStudy[],
  language: Language,
  outingId: string = plan.headlineOuting,
): FindingContext {
  const outing = plan.outings.find((entry) => entry.id === outingId) ?? plan.outings[0]!;
  return {
    plan,
    outing,
    language,
    options: plan.options.map((option, index) => ({
      option,
      path: `options.${index}`,
      controller: option.controller ?? plan.machine.controller,
      controllerPath:
        option.controller === null ? 'machine.controller' : `options.${index}.controller`,
      study: studies.find((study) => study.id === option.id) ?? null,
    })),
  };
}
