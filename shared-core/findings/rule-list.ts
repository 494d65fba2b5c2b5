import type { Language } from '../plan/language.ts';
import { keepingRules } from './families/keeping.ts';
import type { Finding, FindingId, Severity, SourceClass } from './finding.ts';
import type { Rule } from './rule.ts';
import { rules } from './rules.ts';

/** Every rule, those that need the simulated week too. */
export const everyRule: readonly Rule[] = [...rules, ...keepingRules];

/** What a rule says of a plan: it stands, it could not be checked, or nothing speaks against the plan. */
export interface RuleState {
  readonly id: FindingId;
  readonly about: string;
  /** The most severe it gets. */
  readonly severity: Severity;
  readonly sourceClass: SourceClass;
  readonly state: 'stands' | 'not-checked' | 'clear';
  /** The gravest that stands; null where none does. */
  readonly worst: Severity | null;
}

const order: readonly Severity[] = ['stop', 'warn', 'note'];

/** Every rule with its state, in the order of the identifiers within each family. */
export function ruleStates(findings: readonly Finding[], language: Language): RuleState[] {
  return everyRule.map((rule) => {
    const own = findings.filter(({ id }) => id === rule.id);
    const standing = own.filter(({ status }) => status === 'finding');
    return {
      id: rule.id,
      about: rule.about[language],
      severity: rule.severity,
      sourceClass: rule.sourceClass,
      state: standing.length > 0 ? 'stands' : own.length > 0 ? 'not-checked' : 'clear',
      worst:
        order.find((severity) => standing.some((finding) => finding.severity === severity)) ?? null,
    };
  });
}
