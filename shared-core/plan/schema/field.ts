import { z } from 'zod';

/** What a plan field is: its name on screen, its unit, and what it means. The reference page is made from this. */
export interface FieldDocs {
  /** Name as shown beside the field. */
  readonly title: string;
  /** Unit as written, e.g. `A·h`; absent for pure numbers and words. */
  readonly unit?: string;
  /** One or two sentences: what it is, where to find it, what happens when it is not known. */
  readonly help?: string;
}

interface NumberFieldDocs extends FieldDocs {
  readonly min: number;
  readonly max: number;
  /** Lowest value is excluded, for quantities that cannot be zero. */
  readonly aboveMin?: boolean;
  readonly integer?: boolean;
}

/**
 * Least distance from a bound that is excluded, as share of the range. What lies closer is no quantity of anything, and
 * one divided by it is beyond what a number can hold.
 */
export const leastAbove = 1e-15;

/** Whether a value lies far enough above the excluded lower end of its range. */
export const isAbove = (value: number, min: number, max: number): boolean =>
  value > min && value - min >= leastAbove * (max - min);

/** A finite number with its unit and range. Ranges are physical limits, not recommendations. */
export function quantity(docs: NumberFieldDocs): z.ZodNumber {
  const { min, max, aboveMin, integer, ...meta } = docs;
  let schema =
    aboveMin === true
      ? z
          .number()
          .gt(min)
          .refine((value) => isAbove(value, min, max))
      : z.number().min(min);
  schema = schema.max(max);
  if (integer === true) schema = schema.int();
  return schema.meta({ ...meta });
}

/** A quantity the user may not know: `null` asks the core for its default, which it then reports. */
export function unknownQuantity(docs: NumberFieldDocs): z.ZodNullable<z.ZodNumber> {
  const { min: _min, max: _max, aboveMin: _above, integer: _integer, ...meta } = docs;
  return quantity(docs)
    .nullable()
    .meta({ ...meta });
}

/** A line of text the user writes; control characters are refused because they end up on paper and in file names. */
export function line(docs: FieldDocs, maxLength = 120): z.ZodString {
  return z
    .string()
    .max(maxLength)
    .refine((text) => !hasControlCharacter(text), { message: 'holds a control character' })
    .meta({ ...docs });
}

/** Text of several lines. */
export function paragraph(docs: FieldDocs, maxLength = 4000): z.ZodString {
  return z
    .string()
    .max(maxLength)
    .meta({ ...docs });
}

/** Identifier of a thing inside one plan: lower-case letters, digits and hyphens. */
export function identifier(): z.ZodString {
  return z
    .string()
    .min(1)
    .max(64)
    .regex(/^[a-z0-9][a-z0-9-]*$/)
    .meta({
      title: 'Identifier',
      help: 'Lower-case letters, digits and hyphens; unique in its list.',
    });
}

function hasControlCharacter(text: string): boolean {
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code < 32 || code === 127) return true;
  }
  return false;
}
