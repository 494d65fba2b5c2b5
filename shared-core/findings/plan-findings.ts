import type { Language } from '../plan/language.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { OptionStudy } from '../study/study.ts';
import { findingContext } from './context.ts';
import type { Finding } from './finding.ts';
import type { Rule } from './rule.ts';
import { rules } from './rules.ts';

const order = { stop: 0, warn: 1, note: 2 } as const;

/** Place in the list: by severity, questions last. */
function rank(finding: Finding): number {
  return finding.status === 'finding' ? order[finding.severity] : order.note + 1;
}

/**
 * Every finding of a plan: standing ones first, the most severe on top, questions last; among equals in the order of
 * the table of rules and of the options.
 */
export function planFindings(
  plan: Plan,
  studies: readonly OptionStudy[],
  language: Language = 'en',
  outingId: string = plan.headlineOuting,
  table: readonly Rule[] = rules,
): Finding[] {
  const context = findingContext(plan, studies, language, outingId);
  return table.flatMap((rule) => rule.check(context)).toSorted((a, b) => rank(a) - rank(b));
}

/** Whether something stands that must be mended before the machine is used. */
export function mustStop(findings: readonly Finding[]): boolean {
  return findings.some((finding) => finding.status === 'finding' && finding.severity === 'stop');
}
