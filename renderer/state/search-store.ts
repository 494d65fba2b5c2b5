import { create } from 'zustand';
import {
  candidateCount,
  type SearchResult,
  type SearchWishes,
} from '#core/compare/search/candidate.ts';
import { chooseTrials, summariseSearch } from '#core/compare/search/search-packs.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { Job, JobListener, Progress } from '../workers/compare-pool.ts';
import type { WorkKind } from '#core/compare/work/work.ts';
import { comparePool } from './compare-pool-of-page.ts';

export interface SearchState {
  readonly result: SearchResult | null;
  /** Plan the result belongs to. */
  readonly searched: Plan | null;
  readonly stage: 'idle' | 'screening' | 'trying';
  readonly progress: Progress | null;
  readonly isBrokenOff: boolean;
  readonly failure: string | null;
}

const idle: SearchState = {
  result: null,
  searched: null,
  stage: 'idle',
  progress: null,
  isBrokenOff: false,
  failure: null,
};

export const useSearch = create<SearchState>(() => idle);

const set = (state: Partial<SearchState>): void => useSearch.setState(state);
let job: Job | null = null;

function listener<K extends WorkKind>(done: JobListener<K>['done']): JobListener<K> {
  return {
    progress: (progress) => set({ progress }),
    done,
    failed(message) {
      job = null;
      set({ stage: 'idle', progress: null, failure: message });
    },
  };
}

/** Screens all candidates, then runs those that are worth it; the result before stays until the new one is there. */
export function startSearch(plan: Plan, wishes: SearchWishes): void {
  job?.cancel();
  set({ stage: 'screening', progress: null, isBrokenOff: false, failure: null });
  job = comparePool().run(
    { kind: 'screen', plan, wishes },
    candidateCount(wishes),
    listener<'screen'>((screened) => {
      const chosen = chooseTrials(wishes, screened);
      set({ stage: 'trying', progress: null });
      job = comparePool().run(
        { kind: 'trial', plan, wishes, chosen },
        chosen.length,
        listener<'trial'>((tried) => {
          job = null;
          const result = summariseSearch(wishes, screened, tried);
          set({ result, searched: plan, stage: 'idle', progress: null });
        }),
      );
    }),
  );
}

/** Breaks the search off at once; packs found before stay. */
export function cancelSearch(): void {
  job?.cancel();
  job = null;
  set({ stage: 'idle', progress: null, isBrokenOff: true });
}
