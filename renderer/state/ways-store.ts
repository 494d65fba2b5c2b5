import { create } from 'zustand';
import type { WayRow } from '#core/drive/compare-ways.ts';
import type { LoadWay } from '#core/drive/load-ways.ts';
import type { AverageScale } from '#core/drive/scale-to-average.ts';
import type { Machine } from '#core/plan/schema/machine.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { Outing } from '#core/plan/schema/outing.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { WaysAnswer, WaysRequest } from '../workers/ways-message.ts';

interface WaysState {
  /** Outing the rows belong to; null before the first answer. */
  readonly outingId: string | null;
  readonly rows: readonly WayRow[];
  /** The rows do not belong to the plan on screen (yet). */
  readonly stale: boolean;
  readonly failure: string | null;
}

export const useWays = create<WaysState>(() => ({
  outingId: null,
  rows: [],
  stale: true,
  failure: null,
}));

/** Comparing waits until edits have paused for so long [ms]; the headline figures go first. */
const pauseMs = 200;

let worker: Worker | null = null;
let ticket = 0;
let compared = { ticket: 0, outingId: '' };
let timer: ReturnType<typeof setTimeout> | undefined;
const scaling = new Map<number, (scale: AverageScale) => void>();

function take({ data }: MessageEvent<WaysAnswer>): void {
  if (data.kind === 'scaled') {
    scaling.get(data.ticket)?.(data.scale);
    scaling.delete(data.ticket);
    return;
  }
  if (data.kind === 'failed') {
    scaling.get(data.ticket)?.({ ok: false, reason: 'not-computable' });
    scaling.delete(data.ticket);
    if (data.ticket === compared.ticket) useWays.setState({ failure: data.message });
    return;
  }
  if (data.ticket !== compared.ticket) return;
  useWays.setState({
    outingId: compared.outingId,
    rows: data.rows,
    stale: false,
    failure: null,
  });
}

function send(request: WaysRequest): void {
  if (worker === null) {
    worker = new Worker(new URL('../workers/ways.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', take);
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      useWays.setState({ failure: event.message });
    });
  }
  worker.postMessage(request, []);
}

/** Asks for the ways of an outing once edits pause; the answer comes into the store. Returns the way to call it off. */
export function askForWays(
  machine: Machine,
  options: readonly Option[],
  outing: Outing,
): () => void {
  useWays.setState({ stale: true });
  clearTimeout(timer);
  timer = setTimeout(() => {
    ticket += 1;
    compared = { ticket, outingId: outing.id };
    send({ kind: 'compare', ticket, machine, options, outing });
  }, pauseMs);
  return () => clearTimeout(timer);
}

/** Road resistance with which the model draws what a way tells over the legs known both ways, on the first option. */
export function askForScale(
  { machine, options }: Plan,
  outing: Outing,
  way: LoadWay,
): Promise<AverageScale> {
  const option = options[0];
  if (option === undefined) return Promise.resolve({ ok: false, reason: 'not-computable' });
  ticket += 1;
  const mine = ticket;
  return new Promise((resolve) => {
    scaling.set(mine, resolve);
    send({ kind: 'scale', ticket: mine, machine, option, outing, way });
  });
}
