import { setValueAt } from '../plan/set-value-at.ts';
import type { Words } from '../plan/language.ts';

/** A field of the plan and what a cure puts there. */
export interface CureChange {
  /** Path in the plan, e.g. `wiring.branches.2.conductor`. */
  readonly path: string;
  /** A JSON value. */
  readonly value: unknown;
}

/** A remedy the plan can take over at once. It changes the plan only; the part still has to be fitted. */
export interface Cure {
  /** What will change, with the new and the old figure, e.g. `Plan 4 mm² in Main line (now 1.5 mm²)`. */
  readonly does: string;
  readonly changes: readonly CureChange[];
}

/** A cure as a rule states it, in both languages. */
export interface CureStatement {
  readonly does: Words;
  readonly changes: readonly CureChange[];
}

/** Puts a cure into a draft of the plan it was worked out for. */
export function applyCure(draft: object, cure: Pick<Cure, 'changes'>): void {
  for (const { path, value } of cure.changes) setValueAt(draft, path, value);
}
