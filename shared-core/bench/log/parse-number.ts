export type DecimalMark = '.' | ',';

/**
 * A number as loggers and spreadsheets write it, or NaN. The other mark is taken as a thousands mark and dropped.
 *
 * @param decimal the decimal mark of the file
 */
export function parseNumber(text: string, decimal: DecimalMark): number {
  const trimmed = text.trim().replace(plainUnit, '');
  const plain =
    decimal === ','
      ? trimmed.replaceAll('.', '').replace(',', '.')
      : trimmed.includes(',')
        ? trimmed.replaceAll(/,(?=\d{3}\b)/g, '')
        : trimmed;
  if (!/^[+\-\u2212]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(plain)) return Number.NaN;
  const value = Number(plain.replace('\u2212', '-'));
  return Math.abs(value) <= largest ? value : Number.NaN;
}

/** A unit written after the figure; only those that need no scaling, for `5 mA` is not 5 A. */
const plainUnit = /(?<=\d)\s*(?:V|A|s|sec|°C)$/;

/** No meter reads beyond this; it also fits single precision. */
const largest = 1e30;

/** The decimal mark that more of the cells can be read with; the point where both can. */
export function guessDecimalMark(cells: readonly string[]): DecimalMark {
  let comma = 0;
  let point = 0;
  for (const cell of cells) {
    if (/^\s*[+-]?\d*,\d+\s*$/.test(cell)) comma += 1;
    if (/^\s*[+-]?\d*\.\d+([eE][+-]?\d+)?\s*$/.test(cell)) point += 1;
  }
  return comma > point ? ',' : '.';
}
