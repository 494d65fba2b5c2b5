import { z } from 'zod';
import { resolvePath, withoutNull } from '#core/plan/field-docs.ts';
import { rangeOf, type QuantityRange } from './quantity-range.ts';

/** What the schema says about a number field of the plan. */
export interface FieldFacts {
  readonly nullable: boolean;
  readonly integer: boolean;
  readonly range: QuantityRange;
}

/** By path with list positions left out: all options have the same fields. */
const known = new Map<string, FieldFacts | null>();

/** Facts about a field; null where the plan has no such field. The schema is walked once for each kind of field. */
export function fieldFacts(path: string): FieldFacts | null {
  const key = path.replaceAll(/\.\d+(?=\.|$)/g, '.*');
  const found = known.get(key);
  if (found !== undefined) return found;
  const schema = resolvePath(path)?.schema;
  const inner = schema === undefined ? undefined : withoutNull(schema);
  const made =
    schema === undefined
      ? null
      : {
          nullable: schema !== inner,
          integer: inner instanceof z.ZodNumber && inner.format === 'safeint',
          range: rangeOf(path),
        };
  known.set(key, made);
  return made;
}
