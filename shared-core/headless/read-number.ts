/** A number from an option, or the line that says what is wanted. */
export type NumberReading =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly line: string };

export interface NumberLimits {
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
}

/**
 * Reads the number given with an option.
 *
 * @param word as typed; undefined where the option was not given
 * @param otherwise what holds then
 */
export function readNumber(
  name: string,
  word: string | undefined,
  otherwise: number,
  { least, most, whole = false }: NumberLimits,
): NumberReading {
  if (word === undefined) return { ok: true, value: otherwise };
  const value = word.trim() === '' ? Number.NaN : Number(word);
  const fits = value >= least && value <= most && (!whole || Number.isInteger(value));
  return fits
    ? { ok: true, value }
    : {
        ok: false,
        line: `${name}: Give a ${whole ? 'whole ' : ''}number from ${least} to ${most}.`,
      };
}
