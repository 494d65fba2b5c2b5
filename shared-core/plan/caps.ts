/** What a plan file may hold at most. Far above any real plan; they keep a hostile file from freezing the program. */
export const planCaps = {
  /** Size of the file as UTF-8 [bytes]. */
  bytes: 8 * 1024 * 1024,
  /** Nesting of objects and lists. */
  depth: 32,
  /** Objects, lists, texts, numbers and the like in the whole file. */
  values: 400_000,
  /** Entries of one list. */
  listEntries: 20_000,
  /** Fields of one object. */
  objectFields: 200,
  /** Characters of one text. */
  textLength: 100_000,
} as const;

/** Bytes of `text` written as UTF-8, stopping early once above `limit`. */
export function utf8Bytes(text: string, limit = Number.MAX_SAFE_INTEGER): number {
  if (text.length > limit) return text.length;
  let bytes = 0;
  for (let index = 0; index < text.length && bytes <= limit; index += 1) {
    const unit = text.charCodeAt(index);
    if (unit < 0x80) bytes += 1;
    else if (unit < 0x800) bytes += 2;
    else if (unit >= 0xd800 && unit < 0xdc00) {
      bytes += 4;
      index += 1;
    } else bytes += 3;
  }
  return bytes;
}
