import { z } from 'zod';
import type { FieldDocs } from './schema/field.ts';
import { planSchema } from './schema/plan.ts';

/** A field found by its path: its schema and what the schema says about it. */
export interface ResolvedField {
  readonly schema: z.ZodType;
  readonly docs: FieldDocs;
}

/**
 * Finds the schema behind a path such as `options.0.pack.block.capacityAh`; list positions may be numbers or `*`.
 * Returns null where the plan has no such field. Where a field exists in several forms of a choice (the kinds of a
 * load), the first form that has it counts.
 */
export function resolvePath(path: string): ResolvedField | null {
  let schemas: z.ZodType[] = [planSchema];
  for (const key of path === '' ? [] : path.split('.')) {
    schemas = schemas.flatMap((schema) => childrenOf(schema, key));
    if (schemas.length === 0) return null;
  }
  const schema = schemas[0]!;
  return { schema, docs: docsOf(schema) };
}

/** Title, unit and help of a field; a path that is no field gives its last part as title. */
export function fieldDocs(path: string): FieldDocs {
  const docs = resolvePath(path)?.docs;
  if (docs !== undefined && docs.title !== '') return docs;
  return { ...docs, title: path.split('.').at(-1) ?? path };
}

/** Lowest and highest value of a number field, or null for any other field. */
export function fieldRange(
  path: string,
): { readonly min: number | null; readonly max: number | null; readonly aboveMin: boolean } | null {
  const resolved = resolvePath(path);
  if (resolved === null) return null;
  const inner = withoutNull(resolved.schema);
  if (!(inner instanceof z.ZodNumber)) return null;
  const { minValue: min, maxValue: max } = inner;
  return { min, max, aboveMin: min !== null && !inner.safeParse(min).success };
}

/** What the schema says about itself; empty texts where it says nothing. */
export function docsOf(schema: z.ZodType): FieldDocs {
  const meta = schema.meta() as Partial<FieldDocs> | undefined;
  return {
    title: meta?.title ?? '',
    ...(meta?.unit === undefined ? {} : { unit: meta.unit }),
    ...(meta?.help === undefined ? {} : { help: meta.help }),
  };
}

/** The schema under a nullable, or the schema itself. */
export function withoutNull(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodNullable ? (schema.unwrap() as z.ZodType) : schema;
}

function childrenOf(schema: z.ZodType, key: string): z.ZodType[] {
  const inner = withoutNull(schema);
  if (inner instanceof z.ZodObject) {
    const child = (inner.shape as Record<string, z.ZodType>)[key];
    return child === undefined || !Object.hasOwn(inner.shape, key) ? [] : [child];
  }
  if (inner instanceof z.ZodArray) {
    return /^(\d+|\*)$/.test(key) ? [inner.element as z.ZodType] : [];
  }
  if (inner instanceof z.ZodUnion) {
    return inner.options.flatMap((option) => childrenOf(option as z.ZodType, key));
  }
  return [];
}
