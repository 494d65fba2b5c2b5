import type { Cure } from './cure.ts';

/** Stable IDs of the rules; the same in documents, code, tests and screens. */
export type FindingId =
  | `SUP-${number}`
  | `DRV-${number}`
  | `BRK-${number}`
  | `STP-${number}`
  | `FUS-${number}`
  | `WIR-${number}`
  | `PCK-${number}`
  | `CUT-${number}`
  | `CHG-${number}`
  | `KEP-${number}`
  | `RUN-${number}`
  | `RID-${number}`
  | `LAW-${number}`;

export type Severity = 'stop' | 'warn' | 'note';

/** standard: standard or regulation. handbook: handbook or data sheet. */
export type SourceClass = 'standard' | 'handbook' | 'common-practice' | 'derived';

/** A number of the plan or of a result that the finding rests on. */
export interface FindingFact {
  readonly label: string;
  readonly value: number;
  readonly unit: string;
}

/** A rule that stands (`finding`) or that lacks an input (`not-checked`). */
export interface Finding {
  readonly id: FindingId;
  readonly status: 'finding' | 'not-checked';
  readonly severity: Severity;
  /** Option concerned; null for the machine. */
  readonly optionId: string | null;
  /** What is wrong, one sentence with the plan's own numbers; for `not-checked`, the question: what is missing. */
  readonly what: string;
  /** What follows if nothing is done. */
  readonly consequence: string;
  readonly remedy: string;
  readonly facts: readonly FindingFact[];
  readonly sourceClass: SourceClass;
  readonly source: string;
  /** Paths of the plan fields that cure it, e.g. `options.0.charger.endVoltageV`. */
  readonly fields: readonly string[];
  /** What the plan can take over in one step; empty where the choice is the reader's. */
  readonly cures: readonly Cure[];
}
