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
  /** Of pack and charger, in the plan's currency. */
  readonly priceLimit: number | null;
  readonly goalMin: number;
  /** Most packs that are simulated. */
  readonly mostRuns: number;
}

/** A block so many times in series and in parallel. */
export interface Candidate {
  readonly block: Block;
  readonly seriesCount: number;
  readonly parallelCount: number;
}

export const candidateCount = ({ blocks, mostSeries, mostParallel }: SearchWishes): number =>
  blocks.length * mostSeries * mostParallel;

/** The candidate of a number, counted through blocks, series and parallel. */
export function candidateAt(wishes: SearchWishes, index: number): Candidate {
  const { blocks, mostSeries, mostParallel } = wishes;
  return {
    block: blocks[Math.floor(index / (mostSeries * mostParallel))]!,
    seriesCount: 1 + (Math.floor(index / mostParallel) % mostSeries),
    parallelCount: 1 + (index % mostParallel),
  };
}

/** A candidate that closed forms do not rule out. */
export interface Passed {
  readonly index: number;
  readonly bay: 'fits' | 'not-found' | 'unknown';
  /** Energy for its mass: which to simulate where there are too many. */
  readonly merit: number;
}

/** What screening some candidates gives; what a worker hands back. */
export interface ScreenPart {
  readonly rejected: Readonly<Record<RejectRule, number>>;
  readonly passed: readonly Passed[];
}

/** A pack that was simulated; null run time where it falls short of the goal. */
export interface TrialPart {
  readonly from: number;
  readonly found: readonly (FoundPack | null)[];
}

/** A pack that meets every wish. */
export interface FoundPack {
  /** Number of the candidate. */
  readonly index: number;
  readonly option: Option;
  readonly runTimeMin: number;
  readonly massKg: number | null;
  /** Of pack and charger; null where nothing is known of it. */
  readonly price: number | null;
  /** True where the price, or a part of it, is what such parts usually cost. */
  readonly isPriceTypical: boolean;
  readonly chargeHours: number | null;
  readonly bay: Passed['bay'];
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

export function noneRejected(): Record<RejectRule, number> {
  return {
    chemistry: 0,
    'no-bms': 0,
    voltage: 0,
    'controller-voltage': 0,
    mass: 0,
    price: 0,
    bay: 0,
    charger: 0,
    'too-short': 0,
    goal: 0,
  };
}
