import type { Finding, Severity } from '#core/findings/finding.ts';
import { placeOfField } from './place-of-field.ts';

/** The gravest finding whose cure stands in that place; notes are not worth a mark. */
export function worstAt(findings: readonly Finding[], place: string): Severity | null {
  const there = findings.filter(
    ({ status, severity, fields }) =>
      status === 'finding' &&
      severity !== 'note' &&
      fields[0] !== undefined &&
      placeOfField(fields[0]) === place,
  );
  if (there.some(({ severity }) => severity === 'stop')) return 'stop';
  return there.length > 0 ? 'warn' : null;
}
