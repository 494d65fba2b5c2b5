import { planFindings } from '../findings/plan-findings.ts';
import type { Language } from '../plan/language.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { studyOption } from './study-option.ts';
import type { PlanStudy } from './study.ts';

/**
 * Runs every option of a plan on one outing and applies the rules: what the worker of the window, the headless command
 * and the sheet call.
 *
 * @param outingId outing to run; the plan's headline outing when left out or unknown
 */
export function studyPlan(plan: Plan, outingId?: string, language: Language = 'en'): PlanStudy {
  const outing =
    plan.outings.find((each) => each.id === outingId) ??
    plan.outings.find((each) => each.id === plan.headlineOuting) ??
    plan.outings[0]!;
  const options = plan.options.map((option) => studyOption(plan, option, outing, language));
  return {
    outingId: outing.id,
    options,
    findings: planFindings(plan, options, language, outing.id),
  };
}
