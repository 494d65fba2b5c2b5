import { readHeader } from './column-role.ts';
import { quantity, temperatureColumn } from './guess-mapping.ts';
import type { LogMapping, LogResult } from './mapping.ts';
import { timeFormats, type TimeFormat } from './parse-time.ts';

/**
 * Changes a mapping by words: `time=elapsed:min,current=I_batt:charge-positive,voltage=3,units=cell1+cell2,run=rate`.
 * A column is named by its header (case does not matter) or by its number from 1; after a colon: the time format, the
 * sense of the current (`charge-positive`, `discharge-positive`), or a factor (`x0.001`). `none` drops a column.
 */
export function applyMapText(mapping: LogMapping, text: string): LogResult<LogMapping> {
  let changed = mapping;
  for (const part of text
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '')) {
    const match = /^([a-z]+)=(.+)$/.exec(part);
    if (match === null)
      return refuse(part, 'a mapping reads ROLE=COLUMN', 'for example time=elapsed_s');
    const step = applyPart(changed, match[1]!, match[2]!);
    if (!step.ok) return step;
    changed = step.value;
  }
  return { ok: true, value: changed };
}

function applyPart(mapping: LogMapping, role: string, text: string): LogResult<LogMapping> {
  const [names = '', option] = splitOption(text);
  const columns: number[] = [];
  for (const name of names === 'none' ? [] : names.split('+')) {
    const column = findColumn(mapping, name);
    if (column === null)
      return refuse(
        role,
        `the log has no column "${name}"`,
        `its columns are ${mapping.columnNames.join(', ')}`,
      );
    columns.push(column);
  }
  const first = columns[0];
  const read = (index: number) => ({ index, header: readHeader(mapping.columnNames[index]!) });
  const scaled = (index: number) => {
    const factor = option?.startsWith('x') === true ? Number(option.slice(1)) : Number.NaN;
    return Number.isFinite(factor) && factor !== 0
      ? { column: index, scale: factor }
      : quantity(read(index));
  };
  switch (role) {
    case 'time': {
      if (first === undefined) return refuse(role, 'a log needs a time', 'name the column of time');
      const format = option ?? mapping.time.format;
      if (!isTimeFormat(format))
        return refuse(
          role,
          `"${format}" is no time format`,
          `use one of ${timeFormats.join(', ')}`,
        );
      return ok({ ...mapping, time: { column: first, format } });
    }
    case 'current': {
      if (first === undefined)
        return refuse(role, 'a log needs a current', 'name the column of current');
      const named = read(first).header.sense ?? 'auto';
      const sense =
        option === 'charge-positive' || option === 'discharge-positive' ? option : named;
      return ok({ ...mapping, current: { ...scaled(first), sense } });
    }
    case 'voltage':
      return ok({ ...mapping, voltage: first === undefined ? null : scaled(first) });
    case 'units':
      return ok({ ...mapping, unitVoltages: columns.map(scaled) });
    case 'temperature':
      return ok({
        ...mapping,
        temperature: first === undefined ? null : temperatureColumn(read(first)),
      });
    case 'speed':
      return ok({ ...mapping, speed: first === undefined ? null : scaled(first) });
    case 'run':
      return ok({ ...mapping, run: columns });
    default:
      return refuse(
        role,
        `"${role}" is no role of a column`,
        'use time, current, voltage, units, temperature, speed or run',
      );
  }
}

/** `h:m:s` holds colons itself, so only the first colon parts column and option. */
function splitOption(text: string): [string | undefined, string | undefined] {
  const colon = text.indexOf(':');
  return colon < 0 ? [text, undefined] : [text.slice(0, colon), text.slice(colon + 1)];
}

function findColumn(mapping: LogMapping, name: string): number | null {
  const wanted = name.trim().toLowerCase();
  const byName = mapping.columnNames.findIndex((column) => column.toLowerCase() === wanted);
  if (byName >= 0) return byName;
  const number = Number(wanted);
  return Number.isInteger(number) && number >= 1 && number <= mapping.columnNames.length
    ? number - 1
    : null;
}

function isTimeFormat(text: string): text is TimeFormat {
  return (timeFormats as readonly string[]).includes(text);
}

function ok(value: LogMapping): LogResult<LogMapping> {
  return { ok: true, value };
}

function refuse(field: string, problem: string, remedy: string): LogResult<never> {
  return { ok: false, problem: { field: `map ${field}`, problem, remedy } };
}
