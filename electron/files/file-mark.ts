import { createHash } from 'node:crypto';

/** What a file was when this program last read or wrote it; null when it did not exist. */
export type FileMark = { readonly bytes: number; readonly sha256: string };

export const markOf = (content: Uint8Array): FileMark => ({
  bytes: content.byteLength,
  sha256: createHash('sha256').update(content).digest('hex'),
});

export const sameMark = (one: FileMark, other: FileMark): boolean =>
  one.bytes === other.bytes && one.sha256 === other.sha256;
