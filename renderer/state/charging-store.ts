import { create } from 'zustand';
import type { ChargingAnswer, ChargingRequest } from '../workers/charging-message.ts';
import { useSettings } from './settings-store.ts';
import { addFindings, useStudyState } from './study-store.ts';
import type { ChargingStudy } from '#core/study/study-charging.ts';

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
function take({ data }: MessageEvent<ChargingAnswer>): void {
  busy = false;
  if (waiting !== null) return send(waiting);
  if (data.ticket !== ticket) return;
  if (data.kind === 'failed') return useChargingState.setState({ failure: data.message });
  useChargingState.setState({ study: data.study, stale: false, failure: null });
  addFindings('week', data.study.findings);
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
  const stop = useStudyState.subscribe(({ base: study, studied }, old) => {
    if (study === null || studied === null || study === old.base) return;
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
