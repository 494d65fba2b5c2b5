import { create } from 'zustand';
import type { PlanStudy } from '#core/study/study.ts';
import { afterPaint } from './after-paint.ts';
import { useStudyState } from './study-store.ts';

interface ShownStudy {
  readonly study: PlanStudy | null;
  readonly before: PlanStudy | null;
  /** The places do not show the figures of the plan on screen (yet). */
  readonly stale: boolean;
  /** From the last edit until its figures stood in the strip [ms]. */
  readonly tookMs: number | null;
}

/**
 * The figures as the places show them: one painted frame behind the strip. The strip answers an edit in a few
 * milliseconds, a place with its charts and tables takes several times as long.
 */
const useShown = create<ShownStudy>(() => ({
  study: null,
  before: null,
  stale: true,
  tookMs: null,
}));

let isFollowing = false;
let lastBase: PlanStudy | null = null;

function follow(): void {
  isFollowing = false;
  const { study, base, before, stale, askedAt } = useStudyState.getState();
  const isNew = base !== lastBase && askedAt !== null;
  lastBase = base;
  useShown.setState({
    study,
    before,
    stale,
    ...(isNew ? { tookMs: performance.now() - askedAt } : {}),
  });
}

useStudyState.subscribe((now, old) => {
  if (now.stale && !old.stale) useShown.setState({ stale: true });
  if (
    isFollowing ||
    (now.study === old.study && now.before === old.before && now.stale === old.stale)
  )
    return;
  // Nothing is kept waiting by the first figures.
  if (useShown.getState().study === null) return follow();
  isFollowing = true;
  afterPaint(follow);
});

/** Figures of the plan for a place to show; null before the first. */
export const useStudy = (): { readonly study: PlanStudy | null } => {
  const study = useShown((state) => state.study);
  return { study };
};

/** From the last edit until its figures stood in the strip [ms]. */
export const useTookMs = (): number | null => useShown((state) => state.tookMs);

/** Whether the places' figures are out of date. */
export const useIsStale = (): boolean => useShown((state) => state.stale);

/** Figures before the last edit, for the ghost in the charts. */
export const useStudyBefore = (): PlanStudy | null => useShown((state) => state.before);
