import { parseQuantity } from '#core/units/parse-quantity.ts';
import type { DecimalMark } from '#core/units/parse-number.ts';
import { convertShown } from '../text/shown-unit.ts';

/** What a person typed into a field of a quantity. Values are in the stored unit. */
export type TypedQuantity =
  | { readonly kind: 'empty' }
  | { readonly kind: 'value'; readonly value: number }
  | {
      readonly kind: 'question';
      readonly readings: readonly { readonly label: string; readonly value: number }[];
    }
  | { readonly kind: 'mistake'; readonly problem: string; readonly remedy: string };

/**
 * Reads what was typed: a number with point or comma, alone (then in the shown unit) or with another unit of the same
 * kind (`8 mph`, `5 lb`, `12 AWG`), which is converted.
 *
 * @param stored unit of the plan field, empty for a pure number
 * @param shown unit shown in the field
 */
export function readQuantity(
  text: string,
  stored: string,
  shown: string,
  decimalMark: DecimalMark,
): TypedQuantity {
  if (text.trim() === '') return { kind: 'empty' };
  const reading = parseQuantity(text, shown === '' ? '1' : shown, { decimalMark });
  // The conversion of the typed unit leaves dust: 8 mph is 12.874752 km/h, not …751999999997.
  const keep = (value: number): number =>
    convertShown(Number(value.toPrecision(12)), shown, stored);
  if (reading.ok) return { kind: 'value', value: keep(reading.value) };
  if (reading.kind === 'mistake') return reading;
  return {
    kind: 'question',
    readings: reading.readings.map(({ label, value }) => ({
      label: label.replace(/ 1$/, ''),
      value: keep(value),
    })),
  };
}
