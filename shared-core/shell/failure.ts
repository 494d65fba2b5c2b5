/**
 * Everything a host (desktop shell or browser) can answer instead of a value.
 * The page turns the code into words; `field`, `problem` and `remedy` come from the plan reader.
 */
export const hostFailureCodes = [
  'cancelled',
  'too-large',
  'missing',
  'unreadable',
  'read-only',
  'disk-full',
  'in-use',
  'changed-outside',
  'too-new',
  'not-a-plan',
  'bad-plan',
  'bad-request',
  'unknown-document',
  'damaged',
  'busy',
  'unsupported',
  'refused',
  'failed',
] as const;
export type HostFailureCode = (typeof hostFailureCodes)[number];

export type HostFailure = {
  readonly ok: false;
  readonly code: HostFailureCode;
  /** Display name of the file concerned, never its folder. */
  readonly name?: string;
  /** Path of the offending plan field, such as `options[1].blocks`. */
  readonly field?: string;
  readonly problem?: string;
  readonly remedy?: string;
};

export type HostResult<T> = { readonly ok: true; readonly value: T } | HostFailure;

export const failure = (
  code: HostFailureCode,
  detail: Omit<HostFailure, 'ok' | 'code'> = {},
): HostFailure => ({ ok: false, code, ...detail });

export const success = <T>(value: T): HostResult<T> => ({ ok: true, value });
