/**
 * Where a library figure comes from. `common-practice`: what parts of the class usually have, no single source.
 * `from-memory`: trade knowledge written down without a sheet at hand.
 */
export type FigureClass = 'published' | 'common-practice' | 'from-memory' | 'derived';

/** The range in which a figure of the part lies in the trade. */
export interface FigureRange {
  /** Field of the part, e.g. `resistanceOhm`. */
  readonly field: string;
  readonly unit: string;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
  readonly sourceClass: FigureClass;
  /** The range in words, with its source or the lack of one. */
  readonly source: string;
}

/** A generic part of the library: no maker, no model, typical figures of its class. */
export interface Part<T> {
  readonly id: string;
  /** Group in the picker, e.g. `AGM, 12 V`. */
  readonly group: string;
  readonly name: string;
  readonly value: T;
  readonly figures: readonly FigureRange[];
  /** Class of every figure that has no range of its own. */
  readonly sourceClass: FigureClass;
}

/** Rounds to three significant digits, as sheets do. */
export function asOnSheets(value: number): number {
  return Number(value.toPrecision(3));
}
