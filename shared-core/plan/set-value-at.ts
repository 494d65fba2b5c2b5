/**
 * Sets the field that a path such as `options.0.pack.stringFuseA` names, inside a draft. A path that leads nowhere is a
 * bug of the caller.
 */
export function setValueAt(draft: object, path: string, value: unknown): void {
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
