import { planFindings } from '../findings/plan-findings.ts';
import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { studyOption } from './study-option.ts';
import type { OptionStudy, PlanStudy } from './study.ts';

/**
 * Runs every option of a plan on one outing and applies the rules: what the worker of the window, the headless command
 * and the sheet call.
 *
 * @param outingId outing to run; the plan's headline outing when left out or unknown
 * @param study how an option is studied; whoever still has its study hands that out instead
 */
export function studyPlan(
  plan: Plan,
  outingId?: string,
  language: Language = 'en',
  study = (option: Option, outing: Outing): OptionStudy =>
    studyOption(plan, option, outing, language),
): PlanStudy {
  const outing =
    plan.outings.find((each) => each.id === outingId) ??
    plan.outings.find((each) => each.id === plan.headlineOuting) ??
    plan.outings[0]!;
  const options = plan.options.map((option) => study(option, outing));
  return {
    outingId: outing.id,
    options,
    findings: planFindings(plan, options, language, outing.id),
  };
}
