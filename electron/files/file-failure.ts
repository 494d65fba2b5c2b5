import { failure, type HostFailure, type HostFailureCode } from '#core/shell/failure.ts';
import { errorCode } from './file-system.ts';
import { FileTooLarge, NotAFile } from './read-capped.ts';

const codes: Readonly<Record<string, HostFailureCode>> = {
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EISDIR: 'not-a-plan',
  ENOSPC: 'disk-full',
  EDQUOT: 'disk-full',
  EFBIG: 'disk-full',
  EROFS: 'read-only',
  EPERM: 'read-only',
  EACCES: 'read-only',
  EBUSY: 'busy',
  ETXTBSY: 'busy',
  EMFILE: 'busy',
  ENFILE: 'busy',
};

/** Turns a failed file operation into what the page may know: a code and the bare file name. */
export const fileFailure = (
  error: unknown,
  name: string,
  doing: 'reading' | 'writing',
): HostFailure => {
  if (error instanceof FileTooLarge) return failure('too-large', { name });
  if (error instanceof NotAFile) return failure('not-a-plan', { name });
  const code = codes[errorCode(error)];
  if (code === 'read-only' && doing === 'reading') return failure('unreadable', { name });
  return failure(code ?? (doing === 'reading' ? 'unreadable' : 'failed'), { name });
};
