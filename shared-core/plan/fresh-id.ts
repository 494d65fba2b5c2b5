/** An identifier no entry of `taken` has: `stem`, or `stem-2`, `stem-3` and so on. */
export function freshId(stem: string, taken: Iterable<string>): string {
  const used = new Set(taken);
  const base = identifierFrom(stem);
  if (!used.has(base)) return base;
  let number = 2;
  while (used.has(`${base}-${number}`)) number += 1;
  return `${base}-${number}`;
}

/** Turns a name into an identifier: lower-case letters, digits, hyphens; `item` where nothing is left. */
export function identifierFrom(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 56)
    .replaceAll(/-+$/g, '');
  return plain === '' ? 'item' : plain;
}
