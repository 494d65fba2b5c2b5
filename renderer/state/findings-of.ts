import type { Finding, Severity } from '#core/findings/finding.ts';

export const severities: readonly Severity[] = ['stop', 'warn', 'note'];

export type SeverityCount = Readonly<Record<Severity, number>> & { readonly notChecked: number };

/** Findings of one option, or those of the machine for null. */
export const findingsOf = (
  findings: readonly Finding[],
  optionId: string | null,
): readonly Finding[] => findings.filter((finding) => finding.optionId === optionId);

/** How many of each severity; rules that lack an input are counted by themselves. */
export function countFindings(findings: readonly Finding[]): SeverityCount {
  const count = { stop: 0, warn: 0, note: 0, notChecked: 0 };
  for (const finding of findings) {
    if (finding.status === 'not-checked') count.notChecked += 1;
    else count[finding.severity] += 1;
  }
  return count;
}
