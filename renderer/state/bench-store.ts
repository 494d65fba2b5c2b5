import { create } from 'zustand';
import { nominalVoltageV } from '#core/pack/nominal-voltage.ts';
import type { LogDoubt, LogMapping, LogProblem } from '#core/bench/index.ts';
import type { LogLoad } from '#core/plan/schema/leg-load.ts';
import type { BenchAnswer, BenchRequest, FitAnswer, LogSummary } from '../workers/bench-message.ts';
import { planStore } from './plan-store.ts';
import { today } from './today.ts';

/** A log on the bench. The file itself stays where it is; only its rows are read. */
export interface BenchLog {
  readonly id: string;
  readonly name: string;
  readonly file: File;
  readonly state: 'opening' | 'mapping' | 'reading' | 'ready' | 'failed';
  readonly share: number;
  readonly mapping: LogMapping | null;
  readonly problem: LogProblem | null;
  readonly doubts: readonly LogDoubt[];
  readonly preview: readonly (readonly string[])[];
  readonly summary: LogSummary | null;
  readonly failure: string | null;
  /** Names of the runs that are fitted. */
  readonly chosen: readonly string[];
}

interface BenchState {
  readonly logs: readonly BenchLog[];
  readonly fitting: boolean;
  readonly fitShare: number;
  readonly problem: LogProblem | null;
  readonly failure: string | null;
  readonly answer: FitAnswer | null;
}

export const useBench = create<BenchState>(() => ({
  logs: [],
  fitting: false,
  fitShare: 0,
  problem: null,
  failure: null,
  answer: null,
}));

let worker: Worker | null = null;
let lastId = 0;
let takeLegLoad: ((load: LogLoad | null) => void) | null = null;

function changeLog(id: string, change: Partial<BenchLog>): void {
  useBench.setState((state) => ({
    logs: state.logs.map((log) => (log.id === id ? { ...log, ...change } : log)),
  }));
}

function take({ data }: MessageEvent<BenchAnswer>): void {
  switch (data.kind) {
    case 'opened': {
      const { mapping, problem, doubts, preview } = data;
      return changeLog(data.id, {
        state: mapping === null ? 'failed' : 'mapping',
        mapping,
        problem,
        doubts,
        preview,
      });
    }
    case 'progress':
      return changeLog(data.id, { share: data.share });
    case 'leg-load':
      takeLegLoad?.(data.load);
      takeLegLoad = null;
      return undefined;
    case 'stopped':
      return changeLog(data.id, { state: 'mapping', share: 0 });
    case 'read': {
      const known = useBench.getState().logs.find((log) => log.id === data.id);
      const discharges = data.summary.runs.filter((run) => run.dischargedAh > 0);
      // A log read again after a fit was broken off keeps the choice made before.
      const chosen = known?.summary == null ? discharges.map((run) => run.name) : known.chosen;
      return changeLog(data.id, { state: 'ready', share: 1, summary: data.summary, chosen });
    }
    case 'fit-progress':
      return useBench.setState({ fitShare: data.share });
    case 'fitted':
      return useBench.setState({
        fitting: false,
        answer: data.answer,
        problem: null,
        failure: null,
      });
    case 'refused':
      return useBench.setState({ fitting: false, problem: data.problem });
    case 'failed':
      if (data.id === null) return useBench.setState({ fitting: false, failure: data.message });
      return changeLog(data.id, { state: 'failed', failure: data.message });
  }
}

function send(request: BenchRequest): void {
  if (worker === null) {
    worker = new Worker(new URL('../workers/bench.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', take);
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      useBench.setState({ fitting: false, failure: event.message });
    });
  }
  worker.postMessage(request, []);
}

/** Puts files on the bench; their columns are guessed at once and read only when agreed to. */
export function addLogs(files: readonly File[], optionId: string): void {
  const { plan } = planStore.getState();
  const option = plan.options.find((entry) => entry.id === optionId) ?? plan.options[0]!;
  for (const file of files) {
    lastId += 1;
    const id = `log-${lastId}`;
    const log: BenchLog = {
      id,
      name: file.name,
      file,
      state: 'opening',
      share: 0,
      mapping: null,
      problem: null,
      doubts: [],
      preview: [],
      summary: null,
      failure: null,
      chosen: [],
    };
    useBench.setState((state) => ({ logs: [...state.logs, log] }));
    send({ kind: 'open', id, file, nominalVoltageV: nominalVoltageV(option) });
  }
}

export function setMapping(id: string, mapping: LogMapping): void {
  changeLog(id, { mapping, problem: null });
}

export function readLog(log: BenchLog): void {
  if (log.mapping === null) return;
  changeLog(log.id, { state: 'reading', share: 0 });
  send({ kind: 'read', id: log.id, file: log.file, mapping: log.mapping });
}

/** A run of a log that was read, thinned to the load of a leg; null where it has no length. */
export const legLoadOf = (log: BenchLog, run: string): Promise<LogLoad | null> =>
  new Promise((resolve) => {
    takeLegLoad?.(null);
    takeLegLoad = resolve;
    const name = run === '' || run === log.name ? log.name : `${log.name}, ${run}`;
    send({ kind: 'leg', id: log.id, run, name: name.slice(0, 120) });
  });

export const stopReading = (id: string): void => send({ kind: 'stop', id });

/** Back to the columns of a log that was read. */
export const remap = (id: string): void =>
  changeLog(id, { state: 'mapping', summary: null, chosen: [] });

export function removeLog(id: string): void {
  send({ kind: 'drop', id });
  useBench.setState((state) => ({ logs: state.logs.filter((log) => log.id !== id) }));
}

export function chooseRun(log: BenchLog, name: string, isChosen: boolean): void {
  const others = log.chosen.filter((entry) => entry !== name);
  changeLog(log.id, { chosen: isChosen ? [...others, name] : others });
}

/** Names of the logs and runs in a fit, as its source says them. */
export function sourceWords(logs: readonly BenchLog[]): string {
  const used = logs.filter((log) => log.chosen.length > 0);
  const words = used.map((log) => `${log.name} (${log.chosen.join(', ')})`).join(', ');
  return `fitted from ${words} on ${today()}`.slice(0, 300);
}

export interface FitConditions {
  readonly temperatureC: number | null;
  /** Charge at which the runs began [%]; null: by their first volts. */
  readonly startPercent: number | null;
}

export function startFit(optionId: string, conditions: FitConditions): void {
  const { logs } = useBench.getState();
  useBench.setState({ fitting: true, fitShare: 0, problem: null, failure: null });
  send({
    kind: 'fit',
    plan: planStore.getState().plan,
    optionId,
    ...conditions,
    source: sourceWords(logs),
    chosen: Object.fromEntries(logs.map((log) => [log.id, log.chosen])),
  });
}

/** Ends a fit in mid-work. The worker goes with it, so the logs are read afresh with the columns agreed to. */
export function cancelFit(): void {
  worker?.terminate();
  worker = null;
  useBench.setState({ fitting: false });
  for (const log of useBench.getState().logs)
    if (log.state === 'ready' || log.state === 'reading') readLog(log);
}

export const forgetFit = (): void => useBench.setState({ answer: null });
