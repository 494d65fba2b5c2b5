import type { z } from 'zod';
import type { Seeded } from './seeded.ts';

interface Definition {
  readonly type: string;
  readonly shape?: Record<string, z.ZodType>;
  readonly element?: z.ZodType;
  readonly innerType?: z.ZodType;
  readonly options?: readonly z.ZodType[];
  readonly items?: readonly z.ZodType[];
  readonly values?: readonly unknown[];
  readonly entries?: Record<string, string>;
  readonly in?: z.ZodType;
  readonly valueType?: z.ZodType;
}

export const definitionOf = (schema: z.ZodType): Definition => schema.def;

/** What a random value may refer to. */
export interface RandomContext {
  readonly random: Seeded;
  /** Identifiers in use, so that references often point somewhere. */
  readonly known: readonly string[];
  /** Gives an identifier not used yet. */
  readonly fresh: () => string;
  readonly depth: number;
}

const words = [
  'a',
  'Links 2',
  'Ümläut <b>&"\'',
  '=1+1',
  '',
  '2026-03-01',
  '07:30',
  'x'.repeat(100),
];

/** A random number a schema accepts: often a bound, else spread evenly over sizes. */
function randomNumber(schema: z.ZodType, random: Seeded): number {
  const bounds = schema as unknown as { minValue: number | null; maxValue: number | null };
  const min = Math.max(bounds.minValue ?? -1e6, -1e9);
  const max = Math.min(bounds.maxValue ?? 1e6, 1e9);
  const candidates = [
    random.chance(0.1) ? min : null,
    random.chance(0.1) ? max : null,
    random.chance(0.03) ? min + (max - min) * 1e-14 : null,
    min + (max - min) * 10 ** (-6 * random.share()),
    min + (max - min) * random.share(),
  ].filter((value) => value !== null);
  for (const candidate of candidates)
    for (const value of [candidate, Math.round(candidate)])
      if (schema.safeParse(value).success) return value;
  return max;
}

/** A random value of the schema's type; nearly always one the schema accepts. */
export function randomValue(schema: z.ZodType, context: RandomContext): unknown {
  const { random, depth } = context;
  const inner = { ...context, depth: depth + 1 };
  const definition = definitionOf(schema);
  switch (definition.type) {
    case 'object':
      return Object.fromEntries(
        Object.entries(definition.shape!).map(([key, child]) => [
          key,
          key === 'id' ? context.fresh() : randomValue(child, inner),
        ]),
      );
    case 'array': {
      const most = depth > 2 ? 2 : 4;
      for (let tries = 0; tries < 6; tries += 1) {
        const value = Array.from({ length: random.below(most + 1) }, () =>
          randomValue(definition.element!, inner),
        );
        if (schema.safeParse(value).success) return value;
      }
      return [randomValue(definition.element!, inner)];
    }
    case 'tuple':
      return definition.items!.map((item) => randomValue(item, inner));
    case 'record':
      return {};
    case 'nullable':
    case 'optional':
      return random.chance(0.35) ? null : randomValue(definition.innerType!, context);
    case 'default':
    case 'prefault':
    case 'readonly':
      return randomValue(definition.innerType!, context);
    case 'pipe':
      return randomValue(definition.in!, context);
    case 'union':
      return randomValue(random.pick(definition.options!), context);
    case 'literal':
      return random.pick(definition.values!);
    case 'enum':
      return random.pick(Object.values(definition.entries!));
    case 'boolean':
      return random.chance(0.5);
    case 'number':
      return randomNumber(schema, random);
    case 'string': {
      const pool = [...(random.chance(0.8) ? context.known : []), ...words];
      const fitting = pool.filter((word) => schema.safeParse(word).success);
      return fitting.length > 0 ? random.pick(fitting) : context.fresh();
    }
    default:
      return null;
  }
}
