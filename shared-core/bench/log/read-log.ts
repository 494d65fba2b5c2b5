import { growingColumn, type GrowingColumn } from './columns.ts';
import { finishRun, type LoggedRun } from './logged-run.ts';
import type { LogMapping } from './mapping.ts';
import { parseNumber } from './parse-number.ts';
import { parseTime } from './parse-time.ts';
import { splitLines } from './split-lines.ts';

/** Why a row was left out. */
export type DropReason =
  | 'blank line'
  | 'comment'
  | 'too few columns'
  | 'no time'
  | 'no current'
  | 'no volts'
  | 'repeated row'
  | 'repeated header'
  | 'too many runs';

/** What was read and what was left out, with reasons; nothing is changed silently. */
export interface ReadLog {
  readonly runs: readonly LoggedRun[];
  readonly rowsRead: number;
  readonly rowsKept: number;
  readonly dropped: ReadonlyMap<DropReason, number>;
}

/** More runs than this in one file mean that the column of runs is none. */
const mostRuns = 1000;

/** Takes a log piece by piece, cut anywhere; the caller decides how the pieces come and when to stop. */
export interface LogReader {
  readonly push: (piece: string) => void;
  readonly rowsRead: () => number;
  readonly finish: () => ReadLog;
}

interface RawRun {
  readonly name: string;
  readonly time: GrowingColumn;
  readonly current: GrowingColumn;
  readonly voltage: GrowingColumn | null;
  readonly units: readonly GrowingColumn[];
  readonly temperature: GrowingColumn | null;
  readonly speed: GrowingColumn | null;
  /** Seconds added because a clock without a date passed midnight. */
  dayOffset: number;
  lastTime: number;
}

/** Reader of one log with a settled mapping. */
export function createLogReader(mapping: LogMapping): LogReader {
  const dropped = new Map<DropReason, number>();
  const runs = new Map<string, RawRun>();
  let rest = '';
  let linesToSkip = mapping.headerLines;
  let rowsRead = 0;
  let restarts = 1;
  const drop = (reason: DropReason) => dropped.set(reason, (dropped.get(reason) ?? 0) + 1);
  const highestColumn = Math.max(
    mapping.time.column,
    mapping.current.column,
    mapping.voltage?.column ?? 0,
    ...mapping.unitVoltages.map((unit) => unit.column),
    ...mapping.run,
  );

  const takeRow = (cells: readonly string[]) => {
    rowsRead += 1;
    if (cells.length === 1 && cells[0]!.trim() === '') return drop('blank line');
    if (cells[0]!.trimStart().startsWith('#')) return drop('comment');
    if (cells.length <= highestColumn) return drop('too few columns');
    const number = (column: number, scale: number) =>
      parseNumber(cells[column]!, mapping.decimal) * scale;
    const time = parseTime(cells[mapping.time.column]!, mapping.time.format, mapping.decimal);
    if (Number.isNaN(time))
      return drop(isHeaderAgain(cells, mapping) ? 'repeated header' : 'no time');
    const current = number(mapping.current.column, mapping.current.scale);
    if (Number.isNaN(current)) return drop('no current');
    const voltage =
      mapping.voltage === null ? null : number(mapping.voltage.column, mapping.voltage.scale);
    const units = mapping.unitVoltages.map((unit) => number(unit.column, unit.scale));
    if ((voltage !== null && Number.isNaN(voltage)) || units.some(Number.isNaN))
      return drop('no volts');
    const run = runOf(cells, time);
    if (run === null) return drop('too many runs');
    if (mapping.time.format === 'h:m:s' && time + run.dayOffset < run.lastTime - 43200)
      run.dayOffset += 86400;
    const seconds = time + run.dayOffset;
    run.lastTime = seconds;
    run.time.push(seconds);
    run.current.push(current);
    run.voltage?.push(voltage!);
    run.units.forEach((column, index) => column.push(units[index]!));
    // A missing temperature is no reason to lose a row: the gap is filled from its neighbours when the run is finished.
    if (run.temperature !== null && mapping.temperature !== null)
      run.temperature.push(
        parseNumber(cells[mapping.temperature.column] ?? '', mapping.decimal) *
          mapping.temperature.scale +
          mapping.temperature.offset,
      );
    if (run.speed !== null && mapping.speed !== null)
      run.speed.push(
        parseNumber(cells[mapping.speed.column] ?? '', mapping.decimal) * mapping.speed.scale,
      );
  };

  /** Without a run column, a time that falls back to where the log began opens a new run. */
  const runOf = (cells: readonly string[], time: number): RawRun | null => {
    if (mapping.run.length > 0)
      return open(mapping.run.map((column) => cells[column]!.trim()).join(' / '));
    const current = open(restarts === 1 ? 'log' : `log ${restarts}`);
    if (current === null) return null;
    const first = firstTimes.get(current.name);
    if (first === undefined) firstTimes.set(current.name, time);
    else if (
      mapping.time.format !== 'h:m:s' &&
      current.time.length() > 20 &&
      Math.abs(time - first) <= 1e-3 * (current.lastTime - first) &&
      current.lastTime > time
    ) {
      restarts += 1;
      const next = open(`log ${restarts}`);
      if (next !== null) firstTimes.set(next.name, time);
      return next;
    }
    return current;
  };
  const firstTimes = new Map<string, number>();
  const open = (name: string): RawRun | null => {
    let run = runs.get(name);
    if (run === undefined) {
      if (runs.size >= mostRuns) return null;
      run = {
        name,
        time: growingColumn('double'),
        current: growingColumn('single'),
        voltage: mapping.voltage === null ? null : growingColumn('single'),
        units: mapping.unitVoltages.map(() => growingColumn('single')),
        temperature: mapping.temperature === null ? null : growingColumn('single'),
        speed: mapping.speed === null ? null : growingColumn('single'),
        dayOffset: 0,
        lastTime: Number.NEGATIVE_INFINITY,
      };
      runs.set(name, run);
    }
    return run;
  };

  const takeLines = (text: string) => {
    if (text === '') return;
    for (const cells of splitLines(text, mapping.delimiter)) {
      if (linesToSkip > 0) linesToSkip -= 1;
      else takeRow(cells);
    }
  };

  return {
    push: (piece) => {
      const text =
        rest +
        (rest === '' && rowsRead === 0 && piece.startsWith('\uFEFF') ? piece.slice(1) : piece);
      const end = Math.max(
        text.lastIndexOf('\n'),
        text.endsWith('\r') ? -1 : text.lastIndexOf('\r'),
      );
      if (end < 0) {
        rest = text;
        return;
      }
      rest = text.slice(end + 1);
      takeLines(text.slice(0, end).replace(/\r$/, ''));
    },
    rowsRead: () => rowsRead,
    finish: () => {
      takeLines(rest);
      rest = '';
      const finished = [...runs.values()].map((run) =>
        finishRun(
          {
            name: run.name,
            timeS: run.time.toArray(),
            currentA: run.current.toArray(),
            voltageV: run.voltage?.toArray() ?? null,
            unitVoltageV: run.units.map((unit) => unit.toArray()),
            temperatureC: run.temperature?.toArray() ?? null,
            speedKmh: run.speed?.toArray() ?? null,
          },
          mapping.current.sense,
        ),
      );
      const repeated = finished.reduce((sum, run) => sum + run.repeatedRows, 0);
      if (repeated > 0) dropped.set('repeated row', repeated);
      return {
        runs: shortNames(finished),
        rowsRead,
        rowsKept: finished.reduce((sum, run) => sum + run.timeS.length, 0),
        dropped,
      };
    },
  };
}

function isHeaderAgain(cells: readonly string[], mapping: LogMapping): boolean {
  return mapping.columnNames[mapping.time.column]!.startsWith(cells[mapping.time.column]!.trim());
}

/** Drops the parts of the names that every run shares. */
function shortNames(runs: readonly LoggedRun[]): LoggedRun[] {
  const parts = runs.map((run) => run.name.split(' / '));
  if (runs.length < 2) return [...runs];
  const varies = parts[0]!.map((part, index) => parts.some((other) => other[index] !== part));
  return runs.map((run, index) => ({
    ...run,
    name: parts[index]!.filter((_, place) => varies[place]).join(' / '),
  }));
}
