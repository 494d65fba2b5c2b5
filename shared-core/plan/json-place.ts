/** Where in a JSON text a position lies. */
export interface JsonPlace {
  /** Line and column, both counted from 1. */
  readonly line: number;
  readonly column: number;
  /** Path of the value that was being written there, e.g. `options.0.name`. */
  readonly path: string;
}

interface Level {
  readonly list: boolean;
  key: string;
  index: number;
  awaitsKey: boolean;
}

/**
 * Finds the path of the value around `position` by a light scan that tolerates any damage after it.
 * JSON.parse says only a position; people need the name of the field.
 */
export function jsonPlace(text: string, position: number): JsonPlace {
  const end = Math.min(position, text.length);
  const levels: Level[] = [];
  let line = 1;
  let lineStart = 0;
  let index = 0;
  while (index < end) {
    const sign = text[index]!;
    const level = levels.at(-1);
    if (sign === '"') {
      const close = endOfText(text, index, end);
      if (level !== undefined && !level.list && level.awaitsKey) {
        level.key = text.slice(index + 1, close);
        level.awaitsKey = false;
      }
      index = close;
    } else if (sign === '{' || sign === '[') {
      levels.push({ list: sign === '[', key: '', index: 0, awaitsKey: sign === '{' });
    } else if (sign === '}' || sign === ']') {
      levels.pop();
    } else if (sign === ',' && level !== undefined) {
      level.index += 1;
      level.awaitsKey = !level.list;
    } else if (sign === '\n') {
      line += 1;
      lineStart = index + 1;
    }
    index += 1;
  }
  const path = levels
    .map((level) => (level.list ? String(level.index) : level.key))
    .filter((part) => part !== '')
    .join('.');
  return { line, column: end - lineStart + 1, path };
}

/** Index of the closing quote of the text that opens at `start`, or `end` where it is cut off. */
function endOfText(text: string, start: number, end: number): number {
  for (let index = start + 1; index < end; index += 1) {
    if (text[index] === '\\') index += 1;
    else if (text[index] === '"') return index;
  }
  return end;
}
