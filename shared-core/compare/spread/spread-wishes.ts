import type { OwnRanges } from '../inputs/uncertain-inputs.ts';

/** What is asked of a spread. */
export interface SpreadWishes {
  readonly outingId?: string;
  /** Cases, 10 to 20,000. */
  readonly caseCount: number;
  readonly seed: number;
  readonly ranges?: OwnRanges;
}

export const defaultSpreadWishes: SpreadWishes = { caseCount: 500, seed: 1 };
