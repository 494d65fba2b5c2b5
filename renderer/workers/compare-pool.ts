import type { PartOf, WorkKind, WorkOf } from '#core/compare/work/work.ts';
import type { CompareAnswer, CompareRequest } from './compare-message.ts';

/** The few things the pool needs of a worker; tests give their own. */
export interface CompareWorker {
  addEventListener(type: 'message', listener: (event: MessageEvent<CompareAnswer>) => void): void;
  addEventListener(type: 'error', listener: (event: ErrorEvent) => void): void;
  postMessage(request: CompareRequest, transfer: Transferable[]): void;
  terminate(): void;
}

/** How far a job is. */
export interface Progress {
  readonly done: number;
  readonly count: number;
  /** Time it will still take [ms]; null before the first answer. */
  readonly leftMs: number | null;
}

export interface JobListener<K extends WorkKind> {
  progress(progress: Progress): void;
  /** Every piece is there, in the order in which they came. */
  done(parts: readonly PartOf<K>[]): void;
  failed(message: string): void;
}

export interface Job {
  /** Nothing more is heard of the job; workers still at it are free or ended within `patienceMs`. */
  cancel(): void;
}

export interface ComparePool {
  readonly size: number;
  run<K extends WorkKind>(work: WorkOf<K>, count: number, listener: JobListener<K>): Job;
  /** Workers that are at a piece of work now. */
  busy(): number;
  close(): void;
}

/** Length of a piece of work [ms]: short, so that a worker is soon free and an edit hardly meets one. */
const pieceMs = 40;
/** A worker still at a cancelled piece after this time [ms] is ended rather than waited for. */
export const patienceMs = 80;

interface OpenJob {
  readonly id: number;
  readonly work: WorkOf<WorkKind>;
  readonly count: number;
  readonly listener: JobListener<WorkKind>;
  readonly parts: PartOf<WorkKind>[];
  readonly startedAt: number;
  next: number;
  done: number;
  /** Measured time of one unit of work [ms]. */
  unitMs: number | null;
}

interface Member {
  worker: CompareWorker | null;
  /** Job it is at, or null. */
  at: number | null;
  readonly opened: Set<number>;
}

/**
 * Shares numbered work among several workers in short pieces. What comes out does not depend on their number or on who
 * does what: pieces are independent, and the parts are put together by their numbers.
 */
export function createComparePool(
  size: number,
  startWorker: () => CompareWorker,
  now: () => number = () => performance.now(),
): ComparePool {
  const members: Member[] = Array.from({ length: size }, () => ({
    worker: null,
    at: null,
    opened: new Set(),
  }));
  let jobs: OpenJob[] = [];
  let lastId = 0;

  const end = (member: Member): void => {
    member.worker?.terminate();
    member.worker = null;
    member.at = null;
    member.opened.clear();
  };

  const drop = (id: number): void => {
    jobs = jobs.filter((job) => job.id !== id);
  };

  const fail = (id: number, message: string): void => {
    const job = jobs.find((each) => each.id === id);
    drop(id);
    job?.listener.failed(message);
  };

  const begin = (member: Member): CompareWorker => {
    const worker = startWorker();
    member.worker = worker;
    worker.addEventListener('message', ({ data }) => {
      if (member.worker !== worker) return;
      member.at = null;
      if (data.kind === 'failed') fail(data.job, data.message);
      else take(data);
      feed();
    });
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      if (member.worker !== worker) return;
      const { at } = member;
      end(member);
      if (at !== null) fail(at, event.message);
      feed();
    });
    return worker;
  };

  const take = (answer: Extract<CompareAnswer, { kind: 'done' }>): void => {
    const job = jobs.find(({ id }) => id === answer.job);
    if (job === undefined) return;
    const units = answer.to - answer.from;
    const measured = answer.tookMs / units;
    job.unitMs = job.unitMs === null ? measured : 0.5 * (job.unitMs + measured);
    job.parts.push(answer.part);
    job.done += units;
    if (job.done >= job.count) {
      drop(job.id);
      job.listener.done(job.parts);
      return;
    }
    const { done, count, startedAt } = job;
    job.listener.progress({
      done,
      count,
      leftMs: ((now() - startedAt) / done) * (count - done),
    });
  };

  /** The youngest job goes first: it is what the user asked for last. */
  const feed = (): void => {
    for (const member of members) {
      if (member.at !== null) continue;
      const job = jobs.findLast(({ next, count }) => next < count);
      if (job === undefined) return;
      const worker = member.worker ?? begin(member);
      if (!member.opened.has(job.id)) {
        member.opened.add(job.id);
        worker.postMessage({ kind: 'open', job: job.id, work: job.work }, []);
      }
      const units = job.unitMs === null ? 1 : Math.max(1, Math.floor(pieceMs / job.unitMs));
      const from = job.next;
      const to = Math.min(job.count, from + Math.min(units, Math.ceil((job.count - from) / size)));
      job.next = to;
      member.at = job.id;
      worker.postMessage({ kind: 'do', job: job.id, from, to }, []);
    }
  };

  return {
    size,
    run(work, count, listener) {
      lastId += 1;
      const id = lastId;
      if (count === 0) {
        listener.done([]);
        return { cancel: () => {} };
      }
      jobs.push({
        id,
        work,
        count,
        listener,
        parts: [],
        startedAt: now(),
        next: 0,
        done: 0,
        unitMs: null,
      });
      feed();
      return {
        cancel() {
          if (!jobs.some((job) => job.id === id)) return;
          drop(id);
          setTimeout(() => {
            for (const member of members) if (member.at === id) end(member);
            feed();
          }, patienceMs);
        },
      };
    },
    busy: () => members.filter(({ at }) => at !== null).length,
    close() {
      jobs = [];
      for (const member of members) end(member);
    },
  };
}
