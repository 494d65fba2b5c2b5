import { edit } from './plan-store.ts';
import { setValueAt } from '#core/plan/set-value-at.ts';
import { valueAt } from '#core/plan/value-at.ts';
import type { Plan } from '#core/plan/schema/plan.ts';

export { setValueAt as setField };

/** Value of the field a path such as `options.0.pack.block.capacityAh` names. */
export const readField = (plan: Plan, path: string): unknown => valueAt(plan, path.split('.'));

/** One undoable edit of one field; further edits of it within a second join this step. */
export function editField(name: string, path: string, value: unknown): void {
  edit(name, (draft) => setValueAt(draft, path, value), path);
}
