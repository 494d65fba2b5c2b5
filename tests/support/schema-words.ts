import { z } from 'zod';
import { planSchema } from '#core/plan/schema/plan.ts';

/** Every title and help sentence of the plan's fields, once each, in the order of the schema. */
export function schemaWords(): string[] {
  const words = new Set<string>();
  const seen = new Set<z.ZodType>();
  const visit = (schema: z.ZodType): void => {
    if (seen.has(schema)) return;
    seen.add(schema);
    const meta = schema.meta() as { title?: string; help?: string } | undefined;
    for (const text of [meta?.title, meta?.help]) if (text !== undefined) words.add(text);
    if (schema instanceof z.ZodNullable) visit(schema.unwrap() as z.ZodType);
    if (schema instanceof z.ZodArray) visit(schema.element as z.ZodType);
    if (schema instanceof z.ZodObject) {
      for (const child of Object.values(schema.shape)) visit(child);
    }
    if (schema instanceof z.ZodUnion) {
      for (const option of schema.options) visit(option as z.ZodType);
    }
  };
  visit(planSchema);
  return [...words];
}
