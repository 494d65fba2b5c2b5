import type { Plan } from '../../plan/schema/plan.ts';
import { candidateCount } from '../search/candidate.ts';
import type { Passed, ScreenPart, SearchWishes, TrialPart } from '../search/candidate.ts';
import { openScreener } from '../search/screen-candidates.ts';
import { tryCandidates } from '../search/try-candidates.ts';
import { sensitivityPart, sensitivityTrials } from '../sensitivity/sensitivity.ts';
import type { SensitivityWishes } from '../sensitivity/sensitivity.ts';
import { bandPart } from '../spread/band.ts';
import type { BandGrid, BandPart } from '../spread/band.ts';
import { sampleOptions, spreadPart, spreadRows } from '../spread/spread-plan.ts';
import type { SpreadWishes } from '../spread/spread-wishes.ts';
import type { SpreadPart } from '../spread/spread.ts';

/** What each kind of work starts from and what a piece of it gives. */
interface Kinds {
  readonly spread: { readonly given: { readonly wishes: SpreadWishes }; readonly part: SpreadPart };
  readonly band: {
    readonly given: {
      readonly wishes: SpreadWishes;
      readonly grid: BandGrid;
      /** The first so many cases of the sample. */
      readonly caseCount: number;
    };
    readonly part: BandPart;
  };
  readonly sensitivity: {
    readonly given: { readonly wishes: SensitivityWishes };
    readonly part: SensitivityPart;
  };
  readonly screen: { readonly given: { readonly wishes: SearchWishes }; readonly part: ScreenPart };
  readonly trial: {
    readonly given: { readonly wishes: SearchWishes; readonly chosen: readonly Passed[] };
    readonly part: TrialPart;
  };
}

export interface SensitivityPart {
  readonly from: number;
  readonly minutes: Float64Array;
}

export type WorkKind = keyof Kinds;
export type WorkOf<K extends WorkKind> = K extends WorkKind
  ? { readonly kind: K; readonly plan: Plan } & Kinds[K]['given']
  : never;
export type PartOf<K extends WorkKind> = Kinds[K]['part'];

/** Work laid out as numbered pieces that any worker can do in any order. */
export interface OpenWork<K extends WorkKind> {
  readonly count: number;
  /** Does the pieces `from` to `to`, without `to`. */
  part(from: number, to: number): PartOf<K>;
}

const openers: { readonly [K in WorkKind]: (work: WorkOf<K>) => OpenWork<K> } = {
  spread({ plan, wishes }) {
    const sampled = sampleOptions(plan, wishes);
    return { count: spreadRows(wishes), part: (from, to) => spreadPart(sampled, from, to) };
  },
  band({ plan, wishes, grid, caseCount }) {
    const sampled = sampleOptions(plan, wishes);
    return { count: caseCount, part: (from, to) => bandPart(sampled, grid, from, to) };
  },
  sensitivity({ plan, wishes }) {
    const trials = sensitivityTrials(plan, wishes);
    return {
      count: trials.reduce((sum, { scenarios }) => sum + scenarios.length, 0),
      part: (from, to) => ({ from, minutes: sensitivityPart(trials, from, to) }),
    };
  },
  screen({ plan, wishes }) {
    const screener = openScreener(plan, wishes);
    return { count: candidateCount(wishes), part: (from, to) => screener.screen(from, to) };
  },
  trial({ plan, wishes, chosen }) {
    return {
      count: chosen.length,
      part: (from, to) => tryCandidates(plan, wishes, chosen, from, to),
    };
  },
};

/** Lays work out. The same work gives the same pieces wherever it is opened. */
export function openWork<K extends WorkKind>(work: WorkOf<K>): OpenWork<K> {
  const open = openers[work.kind as K] as (given: WorkOf<K>) => OpenWork<K>;
  return open(work);
}
