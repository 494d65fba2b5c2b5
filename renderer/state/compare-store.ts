import { create } from 'zustand';
import type { OptionSensitivity } from '#core/compare/sensitivity/sensitivity.ts';
import type { OptionBand } from '#core/compare/spread/band.ts';
import { defaultSpreadWishes } from '#core/compare/spread/spread-wishes.ts';
import type { SpreadWishes } from '#core/compare/spread/spread-wishes.ts';
import type { PlanSpread } from '#core/compare/spread/spread.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { Job, JobListener, Progress } from '../workers/compare-pool.ts';
import type { WorkKind } from '#core/compare/work/work.ts';
import { comparePool } from './compare-pool-of-page.ts';
import { failureText } from './failure-text.ts';
import { useSettings } from './settings-store.ts';
import { addFindings, useStudyState } from './study-store.ts';

/** What is worked out behind the figures, in this order. */
export type BehindKind = 'spread' | 'sensitivity' | 'band';

export interface CompareState {
  readonly spread: PlanSpread | null;
  readonly sensitivity: readonly OptionSensitivity[] | null;
  readonly bands: readonly OptionBand[] | null;
  /** Results that belong to the plan on screen; the others are out of date or not there yet. */
  readonly fresh: ReadonlySet<BehindKind>;
  readonly running: BehindKind | null;
  readonly progress: Progress | null;
  /** The user has broken off; nothing goes on until an edit or until he asks. */
  readonly isStopped: boolean;
  readonly failure: string | null;
  /** Cases of a spread. */
  readonly caseCount: number;
}

export const useCompare = create<CompareState>(() => ({
  spread: null,
  sensitivity: null,
  bands: null,
  fresh: new Set(),
  running: null,
  progress: null,
  isStopped: false,
  failure: null,
  caseCount: defaultSpreadWishes.caseCount,
}));

/** Work behind the figures waits until edits have paused for so long [ms]. */
const pauseMs = 1000;
/** Cases drawn as a band, and the times at which they are read. */
const bandCases = 120;
const bandPoints = 240;

type CompareWork = typeof import('./compare-work.ts');

let work: CompareWork | null = null;
let plan: Plan | null = null;
let outingId: string | undefined;
let job: Job | null = null;
let timer: ReturnType<typeof setTimeout> | undefined;
/** What is worked out only while a screen shows it; counted by screens. */
const wanted: Record<BehindKind, number> = { spread: 1, sensitivity: 0, band: 0 };

const set = (state: Partial<CompareState>): void => useCompare.setState(state);

const isDue = (kind: BehindKind): boolean =>
  wanted[kind] > 0 && !useCompare.getState().fresh.has(kind);

function stopJob(): void {
  job?.cancel();
  job = null;
  set({ running: null, progress: null });
}

/** Starts what is due next, unless something runs or the user has stopped it. */
function goOn(): void {
  const { running, isStopped, failure } = useCompare.getState();
  const waits = useStudyState.getState().stale;
  if (plan === null || waits || running !== null || isStopped || failure !== null) return;
  if (work === null) fetchWork();
  else if (isDue('spread')) startSpread(work, plan);
  else if (isDue('sensitivity')) startSensitivity(work, plan);
  else if (isDue('band')) startBand(work, plan);
}

/** Kept out of the code the first figures wait for. */
function fetchWork(): void {
  import('./compare-work.ts').then(
    (fetched) => {
      work = fetched;
      goOn();
    },
    (error: unknown) => set({ failure: failureText(error) }),
  );
}

function listener<K extends WorkKind>(
  kind: BehindKind,
  take: JobListener<K>['done'],
): JobListener<K> {
  set({ running: kind, progress: null });
  return {
    progress: (progress) => set({ progress }),
    done(parts) {
      job = null;
      take(parts);
      const fresh = new Set([...useCompare.getState().fresh, kind]);
      set({ fresh, running: null, progress: null });
      goOn();
    },
    failed(message) {
      job = null;
      set({ running: null, progress: null, failure: message });
    },
  };
}

const wishesNow = (): SpreadWishes => ({
  caseCount: useCompare.getState().caseCount,
  seed: defaultSpreadWishes.seed,
  ...(outingId === undefined ? {} : { outingId }),
});

function startSpread(use: CompareWork, of: Plan): void {
  const wishes = wishesNow();
  job = comparePool().run(
    { kind: 'spread', plan: of, wishes },
    use.spreadRows(wishes),
    listener<'spread'>('spread', (parts) => {
      const spread = use.summariseSpread(of, wishes, parts);
      set({ spread });
      const { base } = useStudyState.getState();
      if (base !== null)
        addFindings(
          'spread',
          use.spreadFindings(of, base.options, spread, useSettings.getState().language),
        );
    }),
  );
}

function startSensitivity(use: CompareWork, of: Plan): void {
  const wishes = outingId === undefined ? {} : { outingId };
  const wanting = { kind: 'sensitivity', plan: of, wishes } as const;
  job = comparePool().run(
    wanting,
    use.openWork<'sensitivity'>(wanting).count,
    listener<'sensitivity'>('sensitivity', (parts) => {
      const inOrder = parts.toSorted((one, other) => one.from - other.from);
      const minutes = Float64Array.from(inOrder.flatMap((part) => [...part.minutes]));
      set({
        sensitivity: use.summariseSensitivity(of, use.sensitivityTrials(of, wishes), minutes),
      });
    }),
  );
}

function startBand(use: CompareWork, of: Plan): void {
  const wishes = wishesNow();
  const { spread } = useCompare.getState();
  const longest = Math.max(1, ...(spread?.options ?? []).map(({ high }) => high.value));
  const grid = { untilMin: 1.02 * longest, pointCount: bandPoints };
  const caseCount = Math.min(bandCases, wishes.caseCount);
  job = comparePool().run(
    { kind: 'band', plan: of, wishes, grid, caseCount },
    caseCount,
    listener<'band'>('band', (parts) =>
      set({
        bands: use.summariseBand(
          of.options.map(({ id }) => id),
          grid,
          caseCount,
          parts,
        ),
      }),
    ),
  );
}

/** Everything is out of date; it is worked out again once edits have paused. */
function restart(): void {
  stopJob();
  set({ fresh: new Set(), isStopped: false, failure: null });
  clearTimeout(timer);
  timer = setTimeout(goOn, pauseMs);
}

/** Follows the figures: every new study is followed by its spread. Returns the way to end it. */
export function startCompareStudies(): () => void {
  const stop = useStudyState.subscribe((state, old) => {
    // An edit: whatever runs is of no use any more, and must not take time from the figures.
    if (state.stale && !old.stale) {
      clearTimeout(timer);
      stopJob();
      set({ fresh: new Set() });
    }
    const { base, studied } = state;
    if (base === null || studied === null || base === old.base) return;
    const isOtherPlan = studied !== plan || base.outingId !== outingId;
    plan = studied;
    outingId = base.outingId;
    if (isOtherPlan && old.studied !== null && !sharesOptions(studied, old.studied))
      set({ spread: null, sensitivity: null, bands: null });
    restart();
  });
  return () => {
    stop();
    clearTimeout(timer);
    stopJob();
    comparePool().close();
  };
}

const sharesOptions = (one: Plan, other: Plan): boolean =>
  one.options.some(({ id }) => other.options.some((option) => option.id === id));

/** Breaks off at once; results that were there before stay, marked as out of date. */
export function stopCompare(): void {
  clearTimeout(timer);
  stopJob();
  set({ isStopped: true });
}

/** Goes on after a stop or a failure. */
export function resumeCompare(): void {
  set({ isStopped: false, failure: null });
  goOn();
}

/** Another number of cases, for a finer spread. */
export function setCaseCount(caseCount: number): void {
  set({ caseCount });
  restart();
}

/** A screen shows this; returns the way to say that it does no longer. */
export function wantCompare(kind: BehindKind): () => void {
  wanted[kind] += 1;
  goOn();
  return () => {
    wanted[kind] -= 1;
  };
}
