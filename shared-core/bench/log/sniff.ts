import { delimiters, type Delimiter } from './mapping.ts';
import { guessDecimalMark, parseNumber, type DecimalMark } from './parse-number.ts';
import { parseTime, timeFormats } from './parse-time.ts';
import { splitLines } from './split-lines.ts';

/** Shape of a log as far as its first lines tell. */
export interface LogShape {
  readonly delimiter: Delimiter;
  readonly decimal: DecimalMark;
  readonly headerLines: number;
  /** One name per column; `column 1` and so on where the log has no header. */
  readonly columnNames: readonly string[];
  /** Rows of data in the sample. */
  readonly rows: readonly (readonly string[])[];
}

const linesLookedAt = 400;

/**
 * Finds delimiter, decimal mark, header and first row of data from the beginning of a log. Null when no line of it holds
 * at least two numbers.
 *
 * @param sample the first few kilobytes; a cut last line does no harm
 */
export function sniffLog(sample: string): LogShape | null {
  const text = sample.startsWith('\uFEFF') ? sample.slice(1) : sample;
  const lines = text.split(/\r\n|\n|\r/).slice(0, linesLookedAt);
  if (lines.length > 2 && !/[\r\n]$/.test(text)) lines.pop();
  let best: { shape: LogShape; score: number } | null = null;
  for (const delimiter of delimiters) {
    const rows = splitLines(lines.join('\n'), delimiter);
    const shape = shapeOf(rows, delimiter);
    if (shape === null) continue;
    // Every cell of a good reading is a number, a time or a name; the earlier delimiter wins a tie.
    const score = shape.share;
    if (best === null || score > best.score + 0.02) best = { shape: shape.shape, score };
  }
  return best?.shape ?? null;
}

function shapeOf(
  rows: readonly (readonly string[])[],
  delimiter: Delimiter,
): { shape: LogShape; share: number } | null {
  const decimal = delimiter === ',' ? '.' : guessDecimalMark(rows.slice(0, 60).flat());
  const isData = (row: readonly string[]) =>
    row.filter((cell) => isValue(cell, decimal)).length >= 2;
  const firstData = rows.findIndex(
    (row, index) => isData(row) && laterRowsAreData(rows, index, isData),
  );
  if (firstData < 0) return null;
  const width = rows[firstData]!.length;
  const data = rows.slice(firstData).filter((row) => row.length > 1 || row[0]?.trim() !== '');
  const fitting = data.filter((row) => row.length === width && isData(row));
  if (width < 2) return null;
  return {
    share: fitting.length / Math.max(1, data.length),
    shape: {
      delimiter,
      decimal,
      headerLines: firstData,
      columnNames: columnNames(rows.slice(0, firstData), width),
      rows: fitting,
    },
  };
}

/** A lone line of numbers above the table, such as a serial number, is no data. */
function laterRowsAreData(
  rows: readonly (readonly string[])[],
  index: number,
  isData: (row: readonly string[]) => boolean,
): boolean {
  const width = rows[index]!.length;
  const next = rows
    .slice(index + 1, index + 5)
    .filter((row) => row.some((cell) => cell.trim() !== ''));
  return next.length === 0 || next.some((row) => row.length === width && isData(row));
}

function isValue(cell: string, decimal: DecimalMark): boolean {
  return (
    !Number.isNaN(parseNumber(cell, decimal)) ||
    timeFormats.slice(5).some((format) => !Number.isNaN(parseTime(cell, format, decimal)))
  );
}

/** Names from the lines above the data that are as wide as the data: name line and unit line are joined. */
function columnNames(above: readonly (readonly string[])[], width: number): string[] {
  const header = above.filter((row) => row.length === width).slice(-2);
  return Array.from({ length: width }, (_, column) => {
    const name = header
      .map((row) => row[column]!.trim().replace(/^#\s*/, ''))
      .filter((word) => word !== '')
      .join(' ');
    return name === '' ? `column ${column + 1}` : name;
  });
}
