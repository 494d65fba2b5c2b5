import { createHash } from 'node:crypto';

/** A plan as it was in a window that has not been closed in order. */
export type RecoveryContent = {
  readonly name: string;
  /** ISO 8601, UTC. */
  readonly savedAt: string;
  /** File the plan belongs to; stays in the shell. */
  readonly path: string | null;
  readonly text: string;
};

const head = 'CELLWAIN-RECOVERY 1';
const headPattern = /^CELLWAIN-RECOVERY 1 ([0-9]{1,9}) ([0-9a-f]{64})\n/;
const longestHead = head.length + 1 + 9 + 1 + 64 + 1;

const digest = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** First line: length [bytes] and checksum of all the rest, so that no damage goes unseen. */
export const encodeRecovery = (content: RecoveryContent): Buffer => {
  const body = Buffer.from(JSON.stringify(content), 'utf8');
  return Buffer.concat([Buffer.from(`${head} ${body.byteLength} ${digest(body)}\n`), body]);
};

const isContent = (value: unknown): value is RecoveryContent => {
  if (typeof value !== 'object' || value === null) return false;
  const { name, savedAt, path, text } = value as Partial<Record<keyof RecoveryContent, unknown>>;
  const texts = [name, savedAt, text].every((field) => typeof field === 'string');
  return texts && (path === null || typeof path === 'string');
};

/** The content, or null when a single bit of the file is not as it was written. */
export const decodeRecovery = (bytes: Buffer): RecoveryContent | null => {
  const match = headPattern.exec(bytes.subarray(0, longestHead).toString('latin1'));
  if (match === null) return null;
  const body = bytes.subarray(match[0].length);
  if (body.byteLength !== Number(match[1]) || digest(body) !== match[2]) return null;
  const value: unknown = JSON.parse(body.toString('utf8'));
  return isContent(value) ? value : null;
};
