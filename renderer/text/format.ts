import type { Language } from '#core/plan/language.ts';
import { formatDuration } from '#core/units/format-duration.ts';
import { formatFixed as fixed, formatSignificant } from '#core/units/format-number.ts';

const locales: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };
export const localeOf = (language: Language): string => locales[language];
export const decimalMarkOf = (language: Language): '.' | ',' => (language === 'de' ? ',' : '.');

/** Narrow no-break space: a number and its unit never part. */
export const thinSpace = '\u202F';

/** A result with the digits it deserves: three significant ones unless told otherwise. */
export const formatFigure = (value: number, language: Language, digits = 3): string =>
  formatSignificant(value, digits, locales[language]);

/** A result with a fixed count of decimals, so that a column of figures stands in line. */
export const formatFixed = (value: number, language: Language, decimals: number): string =>
  fixed(value, decimals, locales[language]);

/** A figure the user typed: every digit he gave, without grouping, so that it can be edited. */
export const formatTyped = (value: number, language: Language): string =>
  new Intl.NumberFormat(locales[language], {
    maximumSignificantDigits: 12,
    useGrouping: false,
  }).format(value);

/** A difference with its sign: a true minus, and no sign at zero. */
export function formatDifference(value: number, language: Language, digits = 2): string {
  const size = formatSignificant(Math.abs(value), digits, locales[language]);
  if (size === '0') return `±0`;
  return `${value < 0 ? '−' : '+'}${size}`;
}

/** Minutes as people say them: `54 min`, `2 h 05 min`. From ten minutes on, seconds are noise. */
export const formatMinutes = (minutes: number, language: Language): string =>
  formatDuration(minutes < 10 ? minutes : Math.round(minutes), locales[language])
    // Two digits of minutes keep a column of durations in line.
    .replace(/ h (?=\d min)/, ' h 0')
    .replaceAll(/ (?=min|h|s|d)/g, thinSpace);
