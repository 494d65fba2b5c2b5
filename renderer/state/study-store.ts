import { create } from 'zustand';
import { createStudyClient, type StudyClient } from '../workers/study-client.ts';
import type { StudyResult } from '../workers/study-message.ts';
import { planStore } from './plan-store.ts';
import { useSettings } from './settings-store.ts';
import { announce } from './toast-store.ts';
import { appTexts } from '../text/app.ts';
import { textNow } from '../text/use-text.ts';
import type { Finding } from '#core/findings/finding.ts';
import { mergeFindings } from '#core/findings/merge-findings.ts';
import type { PlanProblem } from '#core/plan/problem.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { PlanStudy } from '#core/study/study.ts';

export interface StudyState {
  /** Figures on screen, with the findings that later work has added; null before the first result. */
  readonly study: PlanStudy | null;
  /** The same as the study left them: what later work starts from. */
  readonly base: PlanStudy | null;
  /** The plan those figures belong to. */
  readonly studied: Plan | null;
  /** Figures before the last edit, for the ghost in the charts. */
  readonly before: PlanStudy | null;
  /** The figures do not belong to the plan on screen (yet). */
  readonly stale: boolean;
  /** Work has gone on for more than a second. */
  readonly slow: boolean;
  readonly problems: readonly PlanProblem[];
  readonly failure: string | null;
  /** When the edit was made that the figures follow [ms]; null before the first. */
  readonly askedAt: number | null;
}

export const useStudyState = create<StudyState>(() => ({
  study: null,
  base: null,
  studied: null,
  before: null,
  stale: true,
  slow: false,
  problems: [],
  failure: null,
  askedAt: null,
}));

let client: StudyClient | null = null;
/** Findings that later work has added, by what found them. */
const added = new Map<string, readonly Finding[]>();

/** The figures with all findings that concern their options. */
function withAdded(base: PlanStudy): PlanStudy {
  const known = new Set(base.options.map(({ id }) => id));
  const fitting = [...added.values()]
    .flat()
    .filter(({ optionId }) => optionId === null || known.has(optionId));
  return fitting.length === 0 ? base : { ...base, findings: mergeFindings(base.findings, fitting) };
}

/** Puts findings of later work among the others, so that they are always in sight; replaces those it found before. */
export function addFindings(finder: 'week' | 'spread', findings: readonly Finding[]): void {
  added.set(finder, findings);
  const { base } = useStudyState.getState();
  if (base !== null) useStudyState.setState({ study: withAdded(base) });
}

/** `base` tells plans apart: it changes when another plan is put in place. */
let asked: { plan: Plan; at: number; base: number; step: string } | null = null;
let studiedBase = 0;
let studiedStep = '';
/** Tells edits apart: those that join into one step are one edit. */
const stepNow = (): string => {
  const { past, future } = planStore.getState();
  return `${past.length} ${future.length} ${past.at(-1)?.key ?? past.at(-1)?.id ?? ''}`;
};
let slowTimer: ReturnType<typeof setTimeout> | undefined;

const settle = (state: Partial<StudyState>): void => {
  clearTimeout(slowTimer);
  useStudyState.setState({ slow: false, ...state });
};

const take = (answer: StudyResult): void => {
  if (asked === null) return;
  const { plan, at, base, step } = asked;
  if (answer.kind === 'problems') return settle({ problems: answer.problems, failure: null });
  if (answer.kind === 'failed') return settle({ failure: answer.message });
  const { study, studied, before } = useStudyState.getState();
  const otherPlan = base !== studiedBase;
  const sameEdit = studied === plan || step === studiedStep;
  studiedBase = base;
  studiedStep = step;
  if (otherPlan) added.clear();
  settle({
    study: withAdded(answer.study),
    base: answer.study,
    studied: plan,
    // A ghost of another plan, of the same state in another language or from amid an edit would mean nothing.
    before: otherPlan ? null : sameEdit ? before : study,
    stale: false,
    problems: [],
    failure: null,
    askedAt: at,
  });
  announce(textNow(appTexts).figuresReady);
};

const ask = (plan: Plan): void => {
  asked = { plan, at: performance.now(), base: planStore.getState().baseId, step: stepNow() };
  useStudyState.setState({ stale: true });
  // Emptied, so that the same sentence is spoken again when the figures are there.
  announce('');
  clearTimeout(slowTimer);
  slowTimer = setTimeout(() => useStudyState.setState({ slow: true }), 1000);
  client?.ask({ plan, outingId: plan.headlineOuting, language: useSettings.getState().language });
};

/** Keeps the figures in step with the plan from now on; returns the way to end it. */
export function startStudies(): () => void {
  client = createStudyClient(
    () => new Worker(new URL('../workers/study.worker.ts', import.meta.url), { type: 'module' }),
    take,
  );
  ask(planStore.getState().plan);
  const stopPlan = planStore.subscribe((state, old) => {
    if (state.plan !== old.plan) ask(state.plan);
  });
  const stopSettings = useSettings.subscribe((settings, old) => {
    if (settings.language !== old.language) ask(planStore.getState().plan);
  });
  return () => {
    stopPlan();
    stopSettings();
    client?.close();
    client = null;
  };
}

/** Gives up the computation; the figures shown before stay, marked as out of date. */
export function cancelStudy(): void {
  client?.cancel();
  settle({});
}

export function retryStudy(): void {
  ask(planStore.getState().plan);
}
