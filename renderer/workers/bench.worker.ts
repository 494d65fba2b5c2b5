import '../state/page-policy.ts';
import { failureText } from '../state/failure-text.ts';
import {
  createLogReader,
  fitBlock,
  guessMapping,
  leaveOneOut,
  plainMapping,
  planFitRequest,
  samplesOfRun,
  sniffLog,
  type LoggedRun,
  type ReadLog,
} from '#core/bench/index.ts';
import { logLoadOf } from '#core/drive/log-load.ts';
import { dischargeWindow } from '#core/bench/log/discharge-window.ts';
import type { BenchAnswer, BenchRequest, LogSummary, RunSummary } from './bench-message.ts';
import { workerScope } from './worker-scope.ts';

const scope = workerScope<BenchRequest, BenchAnswer>();

const post = (answer: BenchAnswer): void => scope.postMessage(answer, []);

const sampleBytes = 65_536;
const pieceBytes = 4 * 1024 * 1024;
const previewRows = 6;

const runs = new Map<string, readonly LoggedRun[]>();
const stopped = new Set<string>();

async function open({
  id,
  file,
  nominalVoltageV,
}: Extract<BenchRequest, { kind: 'open' }>): Promise<void> {
  const sample = await file.slice(0, sampleBytes).text();
  const guess = guessMapping(sample, { nominalVoltageV });
  post({
    kind: 'opened',
    id,
    mapping: guess.ok ? guess.value.mapping : plainMapping(sample),
    problem: guess.ok ? null : guess.problem,
    doubts: guess.ok ? guess.value.doubts : [],
    preview: sniffLog(sample)?.rows.slice(0, previewRows) ?? [],
  });
}

/** Reads piece by piece; between pieces a request to stop can come in. */
async function read({ id, file, mapping }: Extract<BenchRequest, { kind: 'read' }>): Promise<void> {
  stopped.delete(id);
  const reader = createLogReader(mapping);
  const decoder = new TextDecoder();
  for (let from = 0; from < file.size; from += pieceBytes) {
    const bytes = await file.slice(from, from + pieceBytes).arrayBuffer();
    if (stopped.has(id)) return post({ kind: 'stopped', id });
    reader.push(decoder.decode(bytes, { stream: from + pieceBytes < file.size }));
    post({
      kind: 'progress',
      id,
      share: Math.min(1, (from + pieceBytes) / file.size),
    });
  }
  const log = reader.finish();
  runs.set(id, log.runs);
  post({ kind: 'read', id, summary: summaryOf(log) });
}

function fit(request: Extract<BenchRequest, { kind: 'fit' }>): void {
  const chosen = Object.entries(request.chosen).flatMap(([id, names]) =>
    (runs.get(id) ?? []).filter((run) => names.includes(run.name)),
  );
  const { plan, optionId, temperatureC, startPercent, source } = request;
  const made = planFitRequest(plan, chosen, { optionId, temperatureC, startPercent, source });
  if (!made.ok) return post({ kind: 'refused', problem: made.problem });
  const steps = chosen.length < 2 ? 1 : chosen.length + 1;
  post({ kind: 'fit-progress', share: 0 });
  const outcome = fitBlock(made.value.request);
  if (!outcome.ok) return post({ kind: 'refused', problem: outcome });
  post({ kind: 'fit-progress', share: 1 / steps });
  const leftOut = leaveOneOut(made.value.request, (count) =>
    post({ kind: 'fit-progress', share: (1 + count) / steps }),
  );
  const { layout } = made.value.request;
  post({ kind: 'fitted', answer: { optionId, layout, fit: outcome.fit, leftOut } });
}

function summaryOf(log: ReadLog): LogSummary {
  return {
    rowsRead: log.rowsRead,
    rowsKept: log.rowsKept,
    dropped: [...log.dropped],
    runs: log.runs.map(runSummary),
  };
}

function runSummary(run: LoggedRun): RunSummary {
  const { timeS, currentA, voltageV, unitVoltageV, sortedRows, gaps, turned } = run;
  const window = dischargeWindow(timeS, currentA);
  const volts = voltageV ?? unitVoltageV[0]!;
  let chargeAs = 0;
  let lowestV = volts[0] ?? 0;
  const [from, to] = window === null ? [0, timeS.length - 1] : [window.start, window.end];
  for (let row = from + 1; row <= to; row += 1) {
    chargeAs += ((currentA[row]! + currentA[row - 1]!) / 2) * (timeS[row]! - timeS[row - 1]!);
    lowestV = Math.min(lowestV, volts[row]!);
  }
  const seconds = (timeS[to] ?? 0) - (timeS[from] ?? 0);
  return {
    name: run.name,
    rows: timeS.length,
    minutes: seconds / 60,
    dischargedAh: window === null ? 0 : chargeAs / 3600,
    currentA: seconds > 0 ? chargeAs / seconds : 0,
    lowestV,
    drive: thinned(samplesOfRun(run, 'worn-paving')),
    notes: { sortedRows, gaps: gaps.count, longestGapS: gaps.longestS, turned },
  };
}

const mostStretches = 400;

function thinned<T>(values: readonly T[]): T[] {
  const every = Math.ceil(values.length / mostStretches);
  return values.filter((_, index) => index % every === 0);
}

async function handle(request: BenchRequest): Promise<void> {
  switch (request.kind) {
    case 'open':
      return open(request);
    case 'read':
      return read(request);
    case 'stop':
      stopped.add(request.id);
      return undefined;
    case 'drop':
      stopped.add(request.id);
      runs.delete(request.id);
      return undefined;
    case 'leg': {
      const run = runs.get(request.id)?.find((entry) => entry.name === request.run);
      post({ kind: 'leg-load', load: run === undefined ? null : logLoadOf(run, request.name) });
      return undefined;
    }
    case 'fit':
      return fit(request);
  }
}

scope.addEventListener('message', ({ data }) => {
  handle(data).catch((error: unknown) =>
    post({
      kind: 'failed',
      id: 'id' in data ? data.id : null,
      message: failureText(error),
    }),
  );
});
