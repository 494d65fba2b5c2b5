export interface Described {
  readonly unit: string;
  readonly meaning: string;
}

export interface NumberSpec extends Described {
  readonly kind: 'number';
  readonly min: number;
  readonly max: number;
  readonly default: number | null;
}

export interface ListSpec extends Described {
  readonly kind: 'list';
  readonly min: number;
  readonly max: number;
}

export interface GaugeSpec extends Described {
  readonly kind: 'gauge';
  readonly min: number;
  readonly max: number;
}

export interface WordSpec<W extends string> extends Described {
  readonly kind: 'word';
  readonly choices: readonly W[];
  readonly default: W | null;
}

export type InputSpec = NumberSpec | ListSpec | GaugeSpec | WordSpec<string>;

/** Type of the checked value that a formula computes with. */
export type ValueOf<S extends InputSpec> =
  S extends WordSpec<infer W> ? W : S extends ListSpec ? readonly number[] : number;

/** A number from `min` to `max`, ends included; `fallback` when it is not given. */
export function number(
  unit: string,
  min: number,
  max: number,
  meaning: string,
  fallback: number | null = null,
): NumberSpec {
  return { kind: 'number', unit, min, max, meaning, default: fallback };
}

/** Several numbers, each from `min` to `max`. */
export function list(unit: string, min: number, max: number, meaning: string): ListSpec {
  return { kind: 'list', unit, min, max, meaning };
}

/** An American wire gauge from `thickest` (-3 is 4/0) to `thinnest`. */
export function gauge(thickest: number, thinnest: number, meaning: string): GaugeSpec {
  return { kind: 'gauge', unit: 'AWG', min: thickest, max: thinnest, meaning };
}

/** One of a few words. */
export function word<const W extends string>(
  choices: readonly W[],
  meaning: string,
  fallback: W | null = null,
): WordSpec<W> {
  return { kind: 'word', unit: '', choices, meaning, default: fallback };
}
