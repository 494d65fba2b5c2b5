const wordsOfNone = /\bNaN\b|\bInfinity\b|\bundefined\b/;

/** The text with such words taken out, where a reader may have written them himself. */
export const withoutWordsOfNone = (text: string): string =>
  text.replaceAll(new RegExp(wordsOfNone, 'g'), 'none');

/** Path of the first number in a result that is not finite, or of the first text that shows one; null where all are. */
export function notFinite(value: unknown, path = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${path}: ${value}`;
  if (typeof value === 'string')
    return wordsOfNone.test(value) ? `${path}: ${value.slice(0, 80)}` : null;
  if (typeof value !== 'object' || value === null) return null;
  if (ArrayBuffer.isView(value)) {
    const numbers = value as unknown as ArrayLike<number>;
    for (let index = 0; index < numbers.length; index += 1)
      if (!Number.isFinite(numbers[index])) return `${path}[${index}]: ${numbers[index]}`;
    return null;
  }
  const entries = value instanceof Map ? [...value.entries()] : Object.entries(value);
  for (const [key, child] of entries) {
    const found = notFinite(child, `${path}.${String(key)}`);
    if (found !== null) return found;
  }
  return null;
}
