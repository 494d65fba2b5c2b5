import { readPlan } from '#core/plan/read-plan.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import type { PlanProblemCode } from '#core/plan/problem.ts';
import type { HostFailureCode } from '#core/shell/failure.ts';

const codes: Partial<Record<PlanProblemCode, HostFailureCode>> = {
  empty: 'not-a-plan',
  'not-json': 'not-a-plan',
  'not-a-plan': 'not-a-plan',
  'too-new': 'too-new',
  'too-large': 'too-large',
};

/**
 * Reads the text with the core and says only whether it is a plan. The shell never hands on a text
 * that is none, and never writes one.
 */
export const checkPlanText = (
  text: string,
  name: string,
): HostResult<{ readonly migratedFrom: number | null }> => {
  const read = readPlan(text);
  if (read.ok) return success({ migratedFrom: read.migratedFrom ?? null });
  const { code, path, problem, remedy } = read.problem;
  return failure(codes[code] ?? 'bad-plan', { name, field: path, problem, remedy });
};

/**
 * Bytes of a file as text: without a byte order mark, and null when they are no UTF-8, for then
 * saving would quietly change them.
 */
export const decodeText = (bytes: Uint8Array): string | null => {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes);
  } catch {
    return null;
  }
};
