import { readHeader, type ColumnRole, type HeaderReading } from './column-role.ts';
import type { LogDoubt } from './doubt.ts';
import type { LogMapping, LogProblem, LogResult, MappingGuess, QuantityColumn } from './mapping.ts';
import { parseNumber } from './parse-number.ts';
import { guessTimeFormat, type TimeFormat } from './parse-time.ts';
import { sniffLog, type LogShape } from './sniff.ts';

/** What is known of the pack before the log is opened. */
export interface LogHints {
  /** Nominal voltage of the whole pack [V]; null when not known. */
  readonly nominalVoltageV: number | null;
}

interface Column {
  readonly index: number;
  readonly header: HeaderReading;
  readonly role: ColumnRole;
  readonly name: string;
}

/**
 * Proposes how the columns of a log are to be read: by their headers first, by their values where headers are silent.
 * The proposal is meant to be looked at; what was not clear is said in `doubts`.
 */
export function guessMapping(sample: string, hints: LogHints): LogResult<MappingGuess> {
  const shape = sniffLog(sample);
  if (shape === null) {
    return refuse(
      'file',
      'no line of the file holds two numbers',
      'export the log as text with one row per reading',
      {
        problem: 'keine Zeile der Datei enthält zwei Zahlen',
        remedy: 'das Protokoll als Text mit einer Zeile je Ablesung ausgeben',
      },
    );
  }
  const doubts: LogDoubt[] = [];
  const columns = shape.columnNames.map((name, index) => classify(name, index, shape));
  assignByValues(columns, shape, hints, doubts);
  const time = pick(steadyTimeFirst(columns, shape), 'time', doubts);
  const current = pick(columns, 'current', doubts);
  const voltage = pick(columns, 'voltage', doubts);
  const units = columns
    .filter((column) => column.role === 'unit-voltage')
    .toSorted((a, b) => (a.header.index ?? a.index) - (b.header.index ?? b.index));
  const found = shape.columnNames.map((name) => `"${name}"`).join(', ');
  if (time === null)
    return refuse(
      'time',
      `no column of time among ${found}`,
      'choose the column yourself; on the command line with --map time=COLUMN',
      missing('Zeit', found),
    );
  if (current === null)
    return refuse(
      'current',
      `no column of current among ${found}`,
      'choose the column yourself; on the command line with --map current=COLUMN',
      missing('Strom', found),
    );
  if (voltage === null && units.length === 0)
    return refuse(
      'voltage',
      `no column of volts among ${found}`,
      'choose the column yourself; on the command line with --map voltage=COLUMN',
      missing('Spannung', found),
    );
  const temperature = pick(columns, 'temperature', doubts);
  const speed = pick(columns, 'speed', doubts);
  const sense = current.header.sense ?? 'auto';
  if (sense === 'auto') doubts.push({ kind: 'sense-by-volts', column: current.name });
  return {
    ok: true,
    value: {
      mapping: {
        delimiter: shape.delimiter,
        decimal: shape.decimal,
        headerLines: shape.headerLines,
        columnNames: shape.columnNames,
        time: { column: time.index, format: timeFormat(time, shape, doubts) },
        current: { ...quantity(current), sense },
        voltage: voltage === null ? null : quantity(voltage),
        unitVoltages: units.map(quantity),
        temperature: temperature === null ? null : temperatureColumn(temperature),
        speed: speed === null ? null : quantity(speed),
        run: columns.filter((column) => column.role === 'run').map((column) => column.index),
      },
      doubts,
    },
  };
}

/**
 * A mapping to start from where the guess found no column for something: time, volts and current stand where the guess
 * would put them or, without one, in the first columns. Null where the text is no table.
 */
export function plainMapping(sample: string): LogMapping | null {
  const shape = sniffLog(sample);
  if (shape === null) return null;
  const columns = shape.columnNames.map((name, index) => classify(name, index, shape));
  const last = columns.length - 1;
  const at = (role: ColumnRole, otherwise: number) =>
    columns.find((column) => column.role === role) ?? columns[Math.min(last, otherwise)]!;
  const time = at('time', 0);
  return {
    delimiter: shape.delimiter,
    decimal: shape.decimal,
    headerLines: shape.headerLines,
    columnNames: shape.columnNames,
    time: { column: time.index, format: timeFormat(time, shape, []) },
    current: { ...quantity(at('current', 1)), sense: 'auto' },
    voltage: quantity(at('voltage', 2)),
    unitVoltages: [],
    temperature: null,
    speed: null,
    run: [],
  };
}

/** Column read as a quantity with the scale its header names. */
export function quantity(column: {
  readonly index: number;
  readonly header: HeaderReading;
}): QuantityColumn {
  return { column: column.index, scale: column.header.scale };
}

/** Temperature column in °C, converted where the header says °F. */
export function temperatureColumn(column: {
  readonly index: number;
  readonly header: HeaderReading;
}): NonNullable<LogMapping['temperature']> {
  return column.header.fahrenheit
    ? { column: column.index, scale: 5 / 9, offset: -160 / 9 }
    : { column: column.index, scale: 1, offset: 0 };
}

function classify(name: string, index: number, shape: LogShape): Column {
  const header = readHeader(name);
  const cells = shape.rows.map((row) => row[index]!);
  const numeric =
    cells.filter((cell) => !Number.isNaN(parseNumber(cell, shape.decimal))).length >
    cells.length / 2;
  const isTime = !numeric && guessTimeFormat(cells, shape.decimal) !== null;
  let role = header.role;
  if (isTime) role = 'time';
  else if (!numeric)
    role = cells.some((cell) => cell.trim() !== '') && header.role !== 'other' ? 'run' : 'other';
  // A name such as "cell" or "rate" may also number its runs; anything else numeric under such a name is left alone.
  // `3.0 A` under such a name is a name, though it can be read as a figure.
  else if (role === 'run' && !cells.every((cell) => /^\s*\d+\s*$|[A-Za-z]/.test(cell)))
    role = 'other';
  // What changes all the time numbers the rows and not the runs.
  if (role === 'run' && changesOften(cells)) role = 'other';
  return { index, header, role, name };
}

/** A date without a clock stands still for a day: a column of time that moves is put before it. */
function steadyTimeFirst(columns: readonly Column[], shape: LogShape): Column[] {
  const moves = ({ index }: Column) => {
    const cells = shape.rows.map((row) => row[index]!);
    return new Set(cells).size > cells.length / 3;
  };
  const still = columns.filter((column) => column.role === 'time' && !moves(column));
  return [...columns.filter((column) => !still.includes(column)), ...still];
}

function changesOften(cells: readonly string[]): boolean {
  const changes = cells.filter((cell, row) => row > 0 && cell !== cells[row - 1]).length;
  return cells.length > 5 && changes > cells.length / 3;
}

/** First column of a role; a doubt where there are several. */
function pick(columns: readonly Column[], role: ColumnRole, doubts: LogDoubt[]): Column | null {
  const found = columns.filter((column) => column.role === role);
  if (found.length > 1) {
    doubts.push({
      kind: 'several',
      role,
      taken: found[0]!.name,
      others: found.slice(1).map((column) => column.name),
    });
  }
  return found[0] ?? null;
}

function timeFormat(column: Column, shape: LogShape, doubts: LogDoubt[]): TimeFormat {
  const guess =
    guessTimeFormat(
      shape.rows.map((row) => row[column.index]!),
      shape.decimal,
    ) ?? 's';
  if (guess === 'day-first') doubts.push({ kind: 'day-first', column: column.name });
  if (guess !== 's') return guess;
  if (column.header.timeUnit === null) doubts.push({ kind: 'no-time-unit', column: column.name });
  return column.header.timeUnit ?? 's';
}

/** Gives roles to unnamed columns: rising values are time, values near the pack's voltage are volts, the next is current. */
function assignByValues(
  columns: Column[],
  shape: LogShape,
  hints: LogHints,
  doubts: LogDoubt[],
): void {
  if (shape.columnNames.some((name) => readHeader(name).role !== 'other')) return;
  const values = columns.map((column) =>
    shape.rows.map((row) => parseNumber(row[column.index]!, shape.decimal)),
  );
  const free = new Set(
    columns.filter((column) => column.role === 'other').map((column) => column.index),
  );
  const take = (index: number | undefined, role: ColumnRole) => {
    if (index === undefined) return;
    free.delete(index);
    columns[index] = { ...columns[index]!, role };
    doubts.push({ kind: 'nameless', column: index + 1, role });
  };
  const rising = (index: number) =>
    values[index]!.every((value, row, all) => row === 0 || value >= all[row - 1]!) &&
    values[index]!.at(-1)! > values[index]![0]!;
  if (!columns.some((column) => column.role === 'time')) take([...free].find(rising), 'time');
  const nominal = hints.nominalVoltageV;
  const nearPack = (index: number) =>
    nominal !== null &&
    values[index]!.every((value) => value > nominal * 0.6 && value < nominal * 1.4);
  take(
    [...free].find(nearPack) ??
      [...free].find((index) => values[index]!.every((value) => value > 0.5)),
    'voltage',
  );
  take([...free][0], 'current');
}

const missing = (what: string, found: string) => ({
  problem: `unter ${found} ist keine Spalte für ${what}`,
  remedy: 'die Spalte selbst wählen',
});

function refuse(
  field: string,
  problem: string,
  remedy: string,
  de: NonNullable<LogProblem['de']>,
): LogResult<never> {
  return { ok: false, problem: { field, problem, remedy, de } };
}
