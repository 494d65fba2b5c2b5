import type { Severity } from './finding.ts';
import type { Rule } from './rule.ts';

const rank: Record<Severity, number> = { stop: 0, warn: 1, note: 2 };

/**
 * Rules that stand under one identifier, because several families look at the same danger from their own data, made one:
 * it is as severe as its worst part, and checks them all in the order of the table.
 */
export function joinRules(parts: readonly Rule[]): Rule[] {
  const byId = new Map<string, Rule[]>();
  for (const rule of parts) byId.set(rule.id, [...(byId.get(rule.id) ?? []), rule]);
  return [...byId.values()].map((rules) => {
    const [first] = rules as [Rule, ...Rule[]];
    const worst = rules.reduce((most, rule) =>
      rank[rule.severity] < rank[most.severity] ? rule : most,
    );
    return {
      ...first,
      severity: worst.severity,
      check: (context) => rules.flatMap((rule) => rule.check(context)),
    };
  });
}
