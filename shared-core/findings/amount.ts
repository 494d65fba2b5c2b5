import { formatDuration, formatSignificant } from '../units/index.ts';
import type { Language } from '../plan/language.ts';

/** A number with its unit as a sentence needs it: three significant digits, decimal sign of the language. */
export function amount(value: number, unit: string, language: Language, digits = 3): string {
  const figure = formatSignificant(value, digits, language);
  return unit === '' ? figure : `${figure} ${unit}`;
}

/** Minutes in words, e.g. `1 h 12 min`. */
export function minutes(value: number, language: Language): string {
  return formatDuration(value, language);
}
