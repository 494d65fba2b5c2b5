import type { Block, Chemistry } from '../../plan/schema/block.ts';
import type { Charger } from '../../plan/schema/charger.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Size } from './fit-in-bay.ts';

/** Rules by which a candidate falls out, in the order in which they are asked. Stable identifiers. */
export const rejectRules = [
  'chemistry',
  // Lithium groups without management are not proposed: nothing would stop an overcharge or a deep discharge.
  'no-bms',
  'voltage',
  'controller-voltage',
  'mass',
  'price',
  'bay',
  'charger',
  'too-short',
  'goal',
] as const;
export type RejectRule = (typeof rejectRules)[number];

export interface SearchWishes {
  readonly outingId?: string;
  readonly blocks: readonly Block[];
  /** Chargers to choose from; with none, the charger is left open. */
  readonly chargers: readonly Charger[];
  readonly chemistries: readonly Chemistry[];
  readonly leastVoltageV: number;
  readonly mostVoltageV: number;
  readonly mostSeries: number;
  readonly mostParallel: number;
  /** Null: no limit. A block that does not state the figure passes and is marked. */
  readonly bay: Size | null;
  readonly massLimitKg: number | null;
  readonly priceLimit: number | null;
  readonly goalMin: number;
  /** Most packs that are simulated. */
  readonly mostRuns: number;
}

/** A pack that meets every wish. */
export interface FoundPack {
  readonly option: Option;
  readonly runTimeMin: number;
  readonly massKg: number | null;
  readonly price: number | null;
  readonly chargeHours: number | null;
  readonly bay: 'fits' | 'not-found' | 'unknown';
  /** No other found pack is at least as good in everything known and better in something. */
  readonly isBest: boolean;
}

export interface SearchResult {
  readonly candidateCount: number;
  readonly rejected: Readonly<Record<RejectRule, number>>;
  /** Passed the screen but lay behind others and was not simulated. */
  readonly notRunCount: number;
  /** Longest run first. */
  readonly found: readonly FoundPack[];
}
