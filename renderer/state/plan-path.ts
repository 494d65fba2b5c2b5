import { edit } from './plan-store.ts';
import { valueAt } from '#core/plan/value-at.ts';
import type { Plan } from '#core/plan/schema/plan.ts';

/** Value of the field a path such as `options.0.pack.block.capacityAh` names. */
export const readField = (plan: Plan, path: string): unknown => valueAt(plan, path.split('.'));

/** Sets a field by its path inside a draft. A path that leads nowhere is a bug of the caller. */
export function setField(draft: object, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let holder: unknown = draft;
  for (const key of keys) {
    if (typeof holder !== 'object' || holder === null) break;
    holder = (holder as Record<string, unknown>)[key];
  }
  if (typeof holder !== 'object' || holder === null) throw new Error(`The plan has no ${path}`);
  (holder as Record<string, unknown>)[last] = value;
}

/** One undoable edit of one field; further edits of it within a second join this step. */
export function editField(name: string, path: string, value: unknown): void {
  edit(name, (draft) => setField(draft, path, value), path);
}
