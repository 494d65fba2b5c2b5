import { fieldRange } from '#core/plan/field-docs.ts';
import { isAbove } from '#core/plan/schema/field.ts';
import { convertShown } from '../text/shown-unit.ts';
import { formatFigure } from '../text/format.ts';
import type { Language } from '#core/plan/language.ts';

/** What a quantity field may hold, in the stored unit. */
export interface QuantityRange {
  readonly min: number | null;
  readonly max: number | null;
  /** The lowest value itself is excluded. */
  readonly aboveMin: boolean;
}

export const openRange: QuantityRange = { min: null, max: null, aboveMin: false };
export const rangeOf = (path: string): QuantityRange => fieldRange(path) ?? openRange;

export const inRange = (value: number, { min, max, aboveMin }: QuantityRange): boolean =>
  (max === null || value <= max) &&
  (min === null ||
    (aboveMin ? (max === null ? value > min : isAbove(value, min, max)) : value >= min));

/** The range in the shown unit, as it is put into a sentence. */
export function rangeWords(
  range: QuantityRange,
  stored: string,
  shown: string,
  language: Language,
  words: (low: string, high: string, above: boolean) => string,
): string {
  const as = (value: number | null): string =>
    value === null ? '…' : formatFigure(convertShown(value, stored, shown), language, 4);
  return `${words(as(range.min), as(range.max), range.aboveMin)}${shown === '' ? '' : ` ${shown}`}`;
}

/**
 * Step of a spin key in the shown unit: one unit of the second digit, so that 18 goes in ones and 2.5 in tenths.
 */
export function spinStep(shownValue: number, integer: boolean): number {
  if (shownValue === 0) return integer ? 1 : 0.1;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(shownValue)) + 1e-9) - 1);
  return integer ? Math.max(1, Math.round(step)) : step;
}

/** Steps of the keys that spin. */
export const spinKeys: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};
