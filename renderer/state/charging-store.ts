import { create } from 'zustand';
import type { ChargingAnswer, ChargingRequest } from '../workers/charging-message.ts';
import { useSettings } from './settings-store.ts';
import { useStudyState } from './study-store.ts';
import type { Finding } from '#core/findings/finding.ts';
import { mergeFindings } from '#core/findings/week-findings.ts';
import type { ChargingStudy } from '#core/study/study-charging.ts';
import type { PlanStudy } from '#core/study/study.ts';

export interface ChargingState {
  /** Null before the first result. */
  readonly study: ChargingStudy | null;
  /** The figures do not belong to the study on screen (yet). */
  readonly stale: boolean;
  readonly failure: string | null;
}

export const useChargingState = create<ChargingState>(() => ({
  study: null,
  stale: true,
  failure: null,
}));

/** Charging waits until edits have paused for so long [ms]; the headline figures go first. */
const pauseMs = 120;

let worker: Worker | null = null;
let busy = false;
let ticket = 0;
let waiting: ChargingRequest | null = null;
let timer: ReturnType<typeof setTimeout> | undefined;
/** The study as the rules of the plan left it, and the findings of the week last known. */
let bare: PlanStudy | null = null;
let merged: PlanStudy | null = null;
let weekly: readonly Finding[] = [];

/** Puts the findings of the week among the others, so that they are always in sight. */
function merge(): void {
  if (bare === null) return;
  const known = new Set(bare.options.map(({ id }) => id));
  const fitting = weekly.filter(({ optionId }) => optionId === null || known.has(optionId));
  merged = { ...bare, findings: mergeFindings(bare.findings, fitting) };
  useStudyState.setState({ study: merged });
}

function take({ data }: MessageEvent<ChargingAnswer>): void {
  busy = false;
  if (waiting !== null) return send(waiting);
  if (data.ticket !== ticket) return;
  if (data.kind === 'failed') return useChargingState.setState({ failure: data.message });
  weekly = data.study.findings;
  useChargingState.setState({ study: data.study, stale: false, failure: null });
  merge();
}

function send(request: ChargingRequest): void {
  if (worker === null) {
    worker = new Worker(new URL('../workers/charging.worker.ts', import.meta.url), {
      type: 'module',
    });
    worker.addEventListener('message', take);
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      busy = false;
      useChargingState.setState({ failure: event.message });
    });
  }
  waiting = null;
  busy = true;
  worker.postMessage(request, []);
}

/** Follows the figures of the plan: each new study is followed by one of its charging. Returns the way to end it. */
export function startChargingStudies(): () => void {
  const stop = useStudyState.subscribe(({ study, studied }) => {
    if (study === null || studied === null || study === bare || study === merged) return;
    bare = study;
    ticket += 1;
    const request: ChargingRequest = {
      ticket,
      plan: studied,
      outingId: study.outingId,
      after: study.options.map(({ run }) => ({
        blocks: run.blocks,
        remainingPercent: run.remainingPercent,
      })),
      language: useSettings.getState().language,
    };
    useChargingState.setState({ stale: true });
    merge();
    clearTimeout(timer);
    timer = setTimeout(() => {
      if (busy) waiting = request;
      else send(request);
    }, pauseMs);
  });
  return () => {
    stop();
    clearTimeout(timer);
    worker?.terminate();
    worker = null;
    busy = false;
  };
}
