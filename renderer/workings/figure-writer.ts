import { formatFigure, formatFixed, formatMinutes, thinSpace } from '../text/format.ts';
import type { Language } from '#core/plan/language.ts';

/** Writes figures into workings, in one language. */
export interface FigureWriter {
  /** With four significant digits: a working shows more than the figure it explains. */
  readonly as: (value: number, unit: string) => string;
  readonly hours: (hours: number) => string;
  readonly minutes: (minutes: number) => string;
  readonly fixed: (value: number, unit: string, decimals: number) => string;
}

export const figureWriter = (language: Language): FigureWriter => {
  const joined = (number: string, unit: string): string =>
    unit === '' ? number : `${number}${thinSpace}${unit}`;
  return {
    as: (value, unit) => joined(formatFigure(value, language, 4), unit),
    hours: (hours) => formatMinutes(60 * hours, language),
    minutes: (minutes) => formatMinutes(minutes, language),
    fixed: (value, unit, decimals) => joined(formatFixed(value, language, decimals), unit),
  };
};
