import type { Language, Words } from '../plan/language.ts';
import { formatDuration, formatFixed, formatSignificant } from '../units/index.ts';
import { displaySymbol, toDisplay, type UnitSystem } from '../units/display.ts';

/** Narrow no-break space: a number and its unit never part. */
const thinSpace = '\u202F';
const locales: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };

/** How numbers are written on the sheet: as on screen, in the reader's language and units. */
export interface SheetVoice {
  readonly language: Language;
  readonly units: UnitSystem;
  /** A bare number, three significant digits unless told otherwise. */
  number(value: number | null | undefined, digits?: number): string;
  /** A number with its unit; a dash where it is not known. */
  quantity(value: number | null | undefined, symbol: string, digits?: number): string;
  fixed(value: number | null | undefined, decimals: number): string;
  /** Minutes as people say them; from ten minutes on without seconds. */
  minutes(value: number | null | undefined): string;
  /** Symbol under which a stored unit is shown, for the head of a column. */
  symbol(symbol: string): string;
  /** A stored value in the unit shown. */
  shown(value: number, symbol: string): number;
}

export function sheetVoice(language: Language, units: UnitSystem): SheetVoice {
  const locale = locales[language];
  const isThere = (value: number | null | undefined): value is number =>
    value !== null && value !== undefined && Number.isFinite(value);
  const number = (value: number | null | undefined, digits = 3): string =>
    isThere(value) ? formatSignificant(value, digits, locale) : '–';
  return {
    language,
    units,
    number,
    quantity: (value, symbol, digits = 3) =>
      isThere(value)
        ? `${number(toDisplay(value, symbol, units), digits)}${thinSpace}${displaySymbol(symbol, units)}`
        : '–',
    fixed: (value, decimals) => (isThere(value) ? formatFixed(value, decimals, locale) : '–'),
    minutes: (value) =>
      isThere(value)
        ? formatDuration(value < 10 ? value : Math.round(value), locale)
            .replace(/ h (?=\d min)/, ' h 0')
            .replaceAll(/ (?=min|h|s|d)/g, thinSpace)
        : '–',
    symbol: (symbol) => displaySymbol(symbol, units),
    shown: (value, symbol) => toDisplay(value, symbol, units),
  };
}

/** Sentences of a table of words in one language. */
export function wordsIn<T extends Readonly<Record<string, Words>>>(
  words: T,
  language: Language,
): { readonly [K in keyof T]: string } {
  return Object.fromEntries(Object.entries(words).map(([key, pair]) => [key, pair[language]])) as {
    [K in keyof T]: string;
  };
}

/** Puts names into the braces of a sentence. */
export function filled(text: string, names: Readonly<Record<string, string>>): string {
  return text.replaceAll(/\{(\w+)\}/g, (brace, key: string) => names[key] ?? brace);
}

/** Plain spaces for text files and messages, where a narrow one may show as a box. */
export function plainSpaces(text: string): string {
  return text.replaceAll(/[\u202F\u00A0]/g, ' ');
}
