/** How well a formula or figure is founded. `recomputed`: derived exactly from published figures. */
export type FormulaSourceClass =
  | 'published'
  | 'recomputed'
  | 'common-practice'
  | 'from-memory'
  | 'derived';

export interface FormulaSource {
  readonly class: FormulaSourceClass;
  readonly citation: string;
}

/** What a formula takes. A list is written `20,10,5`; a gauge `12` or `1/0`. */
export interface FormulaInput {
  readonly name: string;
  readonly kind: 'number' | 'list' | 'word' | 'gauge';
  readonly unit: string;
  readonly meaning: string;
  /** Values accepted, ends included; null for words. */
  readonly range: { readonly min: number; readonly max: number } | null;
  /** Words accepted; null for numbers. */
  readonly choices: readonly string[] | null;
  /** Taken when the input is not given; null where it must be given. */
  readonly default: number | string | null;
}

export interface FormulaOutput {
  readonly name: string;
  readonly unit: string;
  readonly meaning: string;
}

/** An intermediate value, so that a person can follow the figure by hand. */
export interface FormulaStep {
  readonly label: string;
  readonly value: number;
  readonly unit: string;
}

/** A result; null where the quantity does not exist, such as the time after which a load of nothing has emptied a pack. */
export type FormulaValue = number | string | readonly number[] | null;

export type FormulaResult =
  | {
      readonly ok: true;
      readonly values: Readonly<Record<string, FormulaValue>>;
      readonly steps: readonly FormulaStep[];
    }
  | FormulaFailure;

/** What is wrong with which input, and how to mend it. */
export interface FormulaFailure {
  readonly ok: false;
  readonly field: string;
  readonly problem: string;
  readonly remedy: string;
}

/** One entry of the catalogue: everything a screen, a sheet or the command line needs to show and evaluate it. */
export interface Formula {
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  readonly inputs: readonly FormulaInput[];
  readonly outputs: readonly FormulaOutput[];
  readonly assumptions: string;
  readonly validity: string;
  readonly source: FormulaSource;
  /** Numbers may come as text, with or without a unit that converts (`8 mph`). Never throws on bad input. */
  readonly evaluate: (inputs: FormulaArguments) => FormulaResult;
}

export type FormulaArguments = Readonly<Record<string, number | string | readonly number[]>>;
