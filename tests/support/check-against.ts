import { appendFileSync, mkdirSync } from 'node:fs';
import { expect } from 'vitest';

/** A figure held against something outside the project. */
export interface ReferenceCheck {
  /** Chapter of the report, e.g. `Rate law`. */
  readonly chapter: string;
  readonly quantity: string;
  readonly unit: string;
  /** Where the reference figure comes from: publication with table, tool with version, measurement. */
  readonly source: string;
  /** published, recomputed, tool, measured, common practice, from memory. */
  readonly class:
    | 'published'
    | 'recomputed'
    | 'tool'
    | 'measured'
    | 'common practice'
    | 'from memory';
  readonly reference: number;
  readonly ours: number;
  /** Largest difference allowed, in the unit, or as a share of the reference. */
  readonly within: { readonly absolute: number } | { readonly share: number };
}

const folder = new URL('../../dist/references/', import.meta.url);

/** Asserts a figure against its reference and writes it down for the report. */
export function checkAgainst(check: ReferenceCheck): void {
  mkdirSync(folder, { recursive: true });
  appendFileSync(new URL(`${process.pid}.jsonl`, folder), `${JSON.stringify(check)}\n`);
  const allowed =
    'absolute' in check.within
      ? check.within.absolute
      : check.within.share * Math.abs(check.reference);
  expect(Number.isFinite(check.ours), `${check.quantity}: ${check.ours}`).toBe(true);
  expect(
    Math.abs(check.ours - check.reference),
    `${check.quantity}: ours ${check.ours}, reference ${check.reference} ${check.unit} (${check.source})`,
  ).toBeLessThanOrEqual(allowed);
}
