import { planCaps } from './caps.ts';

/** What the structural scan can object to, before any field is looked at. */
export interface ScanObjection {
  readonly code: 'too-deep' | 'too-many' | 'forbidden-key' | 'not-finite';
  readonly path: string;
  /** The key, count or number that gave offence. */
  readonly found: string;
}

/** Keys that reach the prototype of objects when a careless copy meets them. */
const forbiddenKeys = new Set(['__proto__', 'prototype', 'constructor']);

/** Walks a parsed JSON value and returns the first objection, or null. Never recurses beyond the depth cap. */
export function scanJson(root: unknown): ScanObjection | null {
  let values = 0;
  const visit = (value: unknown, path: string, depth: number): ScanObjection | null => {
    values += 1;
    if (values > planCaps.values) return { code: 'too-many', path, found: String(planCaps.values) };
    if (typeof value === 'number' && !Number.isFinite(value)) {
      return { code: 'not-finite', path, found: String(value) };
    }
    if (typeof value === 'string' && value.length > planCaps.textLength) {
      return { code: 'too-many', path, found: String(value.length) };
    }
    if (typeof value !== 'object' || value === null) return null;
    if (depth > planCaps.depth) return { code: 'too-deep', path, found: String(depth) };
    const entries: readonly (readonly [string, unknown])[] = Array.isArray(value)
      ? value.map((entry: unknown, index) => [String(index), entry] as const)
      : Object.entries(value);
    const cap = Array.isArray(value) ? planCaps.listEntries : planCaps.objectFields;
    if (entries.length > cap) return { code: 'too-many', path, found: String(entries.length) };
    for (const [key, entry] of entries) {
      const inner = path === '' ? key : `${path}.${key}`;
      if (forbiddenKeys.has(key)) return { code: 'forbidden-key', path: inner, found: key };
      const objection = visit(entry, inner, depth + 1);
      if (objection !== null) return objection;
    }
    return null;
  };
  return visit(root, '', 1);
}
