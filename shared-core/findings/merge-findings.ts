import type { Finding } from './finding.ts';

const order = { stop: 0, warn: 1, note: 2 } as const;

const rank = (finding: Finding) => (finding.status === 'finding' ? order[finding.severity] : 3);

/** Two lists as one, the most severe first, questions last. */
export function mergeFindings(one: readonly Finding[], other: readonly Finding[]): Finding[] {
  return [...one, ...other].toSorted((a, b) => rank(a) - rank(b));
}
