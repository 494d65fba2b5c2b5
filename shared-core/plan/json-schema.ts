import { z } from 'zod';
import { planSchema } from './schema/plan.ts';

/**
 * The plan as JSON Schema, draft 2020-12: `title` is the name on screen, `description` the help, `x-unit` the unit.
 * What holds between fields (see cross-checks) cannot be said there.
 */
export function planJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(planSchema, {
    override: ({ jsonSchema }) => {
      const loose = jsonSchema as Record<string, unknown>;
      if (typeof loose['unit'] === 'string') loose['x-unit'] = loose['unit'];
      if (typeof loose['help'] === 'string') loose['description'] = loose['help'];
      delete loose['unit'];
      delete loose['help'];
    },
  });
}

/** The same as the text of the documented file `plan.schema.json`. */
export function planJsonSchemaText(): string {
  return `${JSON.stringify(planJsonSchema(), null, 2)}\n`;
}
