import { parseNumber, type DecimalMark } from './parse-number.ts';

/** How a log writes time. `iso` covers year-first dates; `day-first` and `month-first` the slashed and dotted ones. */
export const timeFormats = [
  's',
  'ms',
  'min',
  'h',
  'days',
  'h:m:s',
  'iso',
  'day-first',
  'month-first',
] as const;
export type TimeFormat = (typeof timeFormats)[number];

const clock = String.raw`(\d{1,5}):([0-5]?\d)(?::([0-5]?\d(?:[.,]\d+)?))?`;
const clockOnly = new RegExp(String.raw`^([+-])?(?:(\d+)\s*[d.\s]\s*)?${clock}$`);
const yearFirst = new RegExp(
  String.raw`^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T\s]+${clock}\s*(Z|[+-]\d{2}:?\d{2})?)?$`,
);
const yearLast = new RegExp(
  String.raw`^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})(?:,?\s+${clock}\s*([AaPp][Mm])?)?$`,
);

const secondsPer = { s: 1, ms: 0.001, min: 60, h: 3600, days: 86400 } as const;

/** Time of a cell in seconds, or NaN. Dates count from 1970 in the log's own time zone, or in UTC where one is given. */
export function parseTime(text: string, format: TimeFormat, decimal: DecimalMark): number {
  switch (format) {
    case 's':
    case 'ms':
    case 'min':
    case 'h':
    case 'days':
      return parseNumber(text, decimal) * secondsPer[format];
    case 'h:m:s': {
      const match = clockOnly.exec(text.trim());
      if (match === null) return Number.NaN;
      const sign = match[1] === '-' ? -1 : 1;
      return sign * (Number(match[2] ?? 0) * 86400 + clockSeconds(match[3], match[4], match[5]));
    }
    case 'iso': {
      const match = yearFirst.exec(text.trim());
      if (match === null) return Number.NaN;
      const day = dayNumber(Number(match[1]), Number(match[2]), Number(match[3]));
      return day * 86400 + clockSeconds(match[4], match[5], match[6]) - zoneSeconds(match[7]);
    }
    case 'day-first':
    case 'month-first': {
      const match = yearLast.exec(text.trim());
      if (match === null) return Number.NaN;
      const [first, second] = [Number(match[1]), Number(match[2])];
      const day =
        format === 'day-first'
          ? dayNumber(Number(match[3]), second, first)
          : dayNumber(Number(match[3]), first, second);
      return day * 86400 + clockSeconds(match[4], match[5], match[6]) + halfDay(match[4], match[7]);
    }
  }
}

/** The format that reads all of the cells; null when none does. Plain numbers are seconds unless the header says else. */
export function guessTimeFormat(cells: readonly string[], decimal: DecimalMark): TimeFormat | null {
  const given = cells.filter((cell) => cell.trim() !== '');
  if (given.length === 0) return null;
  const order: readonly TimeFormat[] = ['s', 'h:m:s', 'iso', 'day-first', 'month-first'];
  return (
    order.find((format) =>
      given.every((cell) => !Number.isNaN(parseTime(cell, format, decimal))),
    ) ?? null
  );
}

function clockSeconds(hours?: string, minutes?: string, seconds?: string): number {
  return (
    Number(hours ?? 0) * 3600 +
    Number(minutes ?? 0) * 60 +
    Number((seconds ?? '0').replace(',', '.'))
  );
}

function zoneSeconds(zone: string | undefined): number {
  if (zone === undefined || zone === 'Z') return 0;
  const digits = zone.replace(':', '');
  const sign = digits.startsWith('-') ? -1 : 1;
  return sign * (Number(digits.slice(1, 3)) * 3600 + Number(digits.slice(3, 5)) * 60);
}

function halfDay(hours: string | undefined, mark: string | undefined): number {
  if (mark === undefined || hours === undefined) return 0;
  const hour = Number(hours);
  if (mark.toLowerCase() === 'pm') return hour < 12 ? 43200 : 0;
  return hour === 12 ? -43200 : 0;
}

/** Days from 1970-01-01 in the Gregorian calendar, or NaN for a date that does not exist. */
function dayNumber(year: number, month: number, day: number): number {
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return Number.NaN;
  // Years start in March so that the leap day comes last.
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
