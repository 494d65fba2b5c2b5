import type { Language } from '../../plan/language.ts';
import type { LogDoubt } from './doubt.ts';
import type { DecimalMark } from './parse-number.ts';
import type { TimeFormat } from './parse-time.ts';

export const delimiters = [';', '\t', ',', '|', ' '] as const;
export type Delimiter = (typeof delimiters)[number];

/** A column that holds a quantity; the cell times `scale` is in the core's unit. */
export interface QuantityColumn {
  readonly column: number;
  readonly scale: number;
}

/** Which way the current counts in the file; `auto` lets the volts decide. */
export type CurrentSense = 'discharge-positive' | 'charge-positive' | 'auto';

/** How the columns of a log are read. Columns count from 0. */
export interface LogMapping {
  readonly delimiter: Delimiter;
  readonly decimal: DecimalMark;
  /** Lines above the first row of data, headers and units included. */
  readonly headerLines: number;
  readonly columnNames: readonly string[];
  readonly time: { readonly column: number; readonly format: TimeFormat };
  readonly current: QuantityColumn & { readonly sense: CurrentSense };
  /** Volts of the whole pack; null when only single blocks or groups were logged. */
  readonly voltage: QuantityColumn | null;
  /** Volts of each block or cell group from the negative end. */
  readonly unitVoltages: readonly QuantityColumn[];
  readonly temperature: (QuantityColumn & { readonly offset: number }) | null;
  /** Speed over the ground, scaled to km/h; null where none was logged. */
  readonly speed: QuantityColumn | null;
  /** Text columns that tell the runs apart; none: one run, or several where the time starts afresh. */
  readonly run: readonly number[];
}

/** A proposal with what the reader should look at before agreeing. */
export interface MappingGuess {
  readonly mapping: LogMapping;
  readonly doubts: readonly LogDoubt[];
}

/** A log that cannot be read as it stands: which part, what is wrong, how to mend it. */
export interface LogProblem {
  readonly field: string;
  readonly problem: string;
  readonly remedy: string;
  /** The same in German, for problems that can show on screen. */
  readonly de?: { readonly problem: string; readonly remedy: string };
}

/** What is wrong and how to mend it, in a language. */
export function problemIn(
  problem: LogProblem,
  language: Language,
): { readonly problem: string; readonly remedy: string } {
  return language === 'de' ? (problem.de ?? problem) : problem;
}

export type LogResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: LogProblem };
