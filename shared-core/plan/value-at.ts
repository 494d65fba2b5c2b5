/** The value a path such as `options.0.name` leads to in a tree of JSON values; undefined where it leads nowhere. */
export function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value: unknown = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** A value as it is quoted in a message: short, and never more than a line. */
export function quoted(value: unknown): string {
  if (typeof value === 'string') return `"${value.length > 40 ? `${value.slice(0, 40)}…` : value}"`;
  if (Array.isArray(value)) return `[${value.length}]`;
  if (typeof value === 'object' && value !== null) return '{…}';
  return String(value);
}
