import type { z } from 'zod';
import { samplePlan, sampleNames } from '#core/plan/samples/index.ts';
import { planSchema } from '#core/plan/schema/plan.ts';
import { definitionOf, randomValue, type RandomContext } from './random-value.ts';
import type { Seeded } from './seeded.ts';

type Json = Record<string | number, unknown>;

/** Schema of what stands at a key, where it can be told. */
function childSchema(schema: z.ZodType, value: unknown, key: string | number): z.ZodType | null {
  const definition = definitionOf(schema);
  switch (definition.type) {
    case 'object':
      return definition.shape![key] ?? null;
    case 'array':
      return definition.element!;
    case 'nullable':
    case 'optional':
    case 'default':
    case 'readonly':
      return childSchema(definition.innerType!, value, key);
    case 'pipe':
      return childSchema(definition.in!, value, key);
    case 'union': {
      const fitting = definition.options!.find((option) => option.safeParse(value).success);
      return fitting === undefined ? null : childSchema(fitting, value, key);
    }
    default:
      return null;
  }
}

const fixed = new Set(['id', 'format', 'version', 'headlineOuting']);

/** Puts one random value of the right type somewhere into the plan. */
function graft(plan: Json, context: RandomContext): void {
  const { random } = context;
  let holder = plan;
  let schema: z.ZodType = planSchema;
  for (;;) {
    const keys = Object.keys(holder).filter((key) => !fixed.has(key));
    if (keys.length === 0) return;
    const key = random.pick(keys);
    const child = childSchema(schema, holder, key);
    if (child === null) return;
    const value = holder[key];
    if (typeof value === 'object' && value !== null && random.chance(0.85)) {
      holder = value as Json;
      schema = child;
      continue;
    }
    holder[key] = randomValue(child, context);
    return;
  }
}

const identifiersIn = (value: unknown): string[] =>
  typeof value !== 'object' || value === null
    ? []
    : Object.entries(value).flatMap(([key, child]) =>
        key === 'id' && typeof child === 'string' ? [child] : identifiersIn(child),
      );

/**
 * A sample with one to twelve random grafts. Most are valid; the reader tells.
 *
 * @param keep whether a graft may stay; one that may not is taken back
 */
export function randomPlan(random: Seeded, keep: (plan: unknown) => boolean = () => true): unknown {
  let plan = structuredClone(samplePlan(random.pick(sampleNames))) as unknown as Json;
  let count = 0;
  const fresh = () => `graft-${(count += 1)}`;
  const grafts = 1 + random.below(12);
  for (let index = 0; index < grafts; index += 1) {
    const grafted = structuredClone(plan);
    graft(grafted, { random, known: identifiersIn(plan), fresh, depth: 0 });
    if (keep(grafted)) plan = grafted;
  }
  return plan;
}
