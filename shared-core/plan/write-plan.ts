import { planSchema, type Plan } from './schema/plan.ts';

/**
 * The text of a plan file: JSON with the keys in the order of the schema, two spaces, a newline at the end, so that
 * the same plan always gives the same bytes and a change shows as few lines.
 */
export function writePlan(plan: Plan): string {
  const checked = planSchema.safeParse(plan);
  return `${JSON.stringify(checked.success ? checked.data : plan, null, 2)}\n`;
}
