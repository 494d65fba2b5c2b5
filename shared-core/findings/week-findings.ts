import type { Language } from '../plan/language.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { keepingRules } from './families/keeping.ts';
import type { Finding } from './finding.ts';
import { planFindings } from './plan-findings.ts';

/**
 * Findings that rest on the simulated week. They take longer than the rest of the rules, so the window asks for them
 * after the figures, and the command line adds them to the others.
 */
export function weekFindings(
  plan: Plan,
  language: Language = 'en',
  outingId: string = plan.headlineOuting,
): Finding[] {
  return planFindings(plan, [], language, outingId, keepingRules);
}
