/** Paths of fields of `raw` that the checked value `known` does not have; at most `limit` of them. */
export function unknownFields(raw: unknown, known: unknown, limit = 20): string[] {
  const found: string[] = [];
  const visit = (given: unknown, kept: unknown, path: string): void => {
    if (typeof given !== 'object' || given === null || found.length >= limit) return;
    for (const [key, entry] of Object.entries(given) as [string, unknown][]) {
      const inner = path === '' ? key : `${path}.${key}`;
      if (typeof kept !== 'object' || kept === null || !Object.hasOwn(kept, key)) {
        if (found.length < limit) found.push(inner);
      } else visit(entry, (kept as Record<string, unknown>)[key], inner);
    }
  };
  visit(raw, known, '');
  return found;
}
