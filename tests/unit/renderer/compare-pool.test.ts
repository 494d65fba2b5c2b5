import { afterEach, describe, expect, test, vi } from 'vitest';
import { openWork, type OpenWork, type WorkKind, type WorkOf } from '#core/compare/work/work.ts';
import { chooseTrials, searchPacks, summariseSearch } from '#core/compare/search/search-packs.ts';
import { candidateCount } from '#core/compare/search/candidate.ts';
import { usualWishes } from '#core/compare/search/usual-wishes.ts';
import { summariseBand } from '#core/compare/spread/band.ts';
import { spreadPlan } from '#core/compare/spread/spread-plan.ts';
import { summariseSpread } from '#core/compare/spread/summarise-spread.ts';
import { libraryBlock } from '#core/library/index.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import {
  createComparePool,
  patienceMs,
  type CompareWorker,
  type JobListener,
} from '#renderer/workers/compare-pool.ts';
import type { CompareAnswer, CompareRequest } from '#renderer/workers/compare-message.ts';

type Listener = (event: { data: CompareAnswer }) => void;

/** A worker that does the work in this thread, after a wait of its own, as the real one would answer. */
function localWorker(waitMs: () => number, tookMs: () => number): CompareWorker {
  const opened = new Map<number, OpenWork<WorkKind>>();
  const listeners: Listener[] = [];
  let ended = false;
  return {
    addEventListener(type: string, listener: never) {
      if (type === 'message') listeners.push(listener);
    },
    postMessage(request: CompareRequest) {
      if (request.kind === 'open') {
        opened.set(request.job, openWork(structuredClone(request.work)));
        return;
      }
      const { job, from, to } = request;
      setTimeout(() => {
        if (ended) return;
        const part = opened.get(job)!.part(from, to);
        const answer: CompareAnswer = { kind: 'done', job, from, to, part, tookMs: tookMs() };
        for (const listener of listeners) listener({ data: answer });
      }, waitMs());
    },
    terminate() {
      ended = true;
    },
  };
}

const plan = samplePlan('orchard-cart');

/** Everything a job gives, by a pool of so many workers that answer out of order. */
const withWorkers = <K extends WorkKind>(
  size: number,
  work: WorkOf<K>,
): Promise<readonly unknown[]> => {
  let turn = 0;
  // Workers of different speed, so that pieces come back in another order for every size.
  const pool = createComparePool(size, () =>
    localWorker(
      () => (turn++ * 7) % 5,
      () => 3 + ((turn * 13) % 17),
    ),
  );
  return new Promise((resolve, reject) => {
    const listener: JobListener<K> = {
      progress: () => {},
      done: (parts) => {
        pool.close();
        resolve(parts);
      },
      failed: (message) => reject(new Error(message)),
    };
    pool.run<K>(work, openWork<K>(work).count, listener);
  });
};

describe('what comes out does not depend on the number of workers', () => {
  test('for a spread', async () => {
    const wishes = { caseCount: 40, seed: 3 };
    const whole = spreadPlan(plan, wishes);
    for (const size of [1, 2, 3, 7]) {
      const parts = await withWorkers(size, { kind: 'spread', plan, wishes });
      expect(summariseSpread(plan, wishes, parts as never)).toEqual(whole);
    }
  });

  test('for the band of a spread', async () => {
    const wishes = { caseCount: 24, seed: 3 };
    const grid = { untilMin: 150, pointCount: 20 };
    const work = { kind: 'band', plan, wishes, grid, caseCount: 12 } as const;
    const ids = plan.options.map(({ id }) => id);
    const whole = summariseBand(ids, grid, 12, [openWork<'band'>(work).part(0, 12)]);
    for (const size of [1, 3]) {
      const parts = await withWorkers(size, work);
      expect(summariseBand(ids, grid, 12, parts as never)).toEqual(whole);
    }
  });

  test('for a search', async () => {
    const wishes = {
      ...usualWishes(plan),
      blocks: ['agm-12v-12ah', 'agm-12v-18ah', 'lfp-24v-20ah', 'nmc-24v-10ah'].map(libraryBlock),
      mostSeries: 6,
      mostParallel: 4,
      mostRuns: 9,
    };
    const whole = searchPacks(plan, wishes);
    for (const size of [1, 2, 5]) {
      const screened = (await withWorkers(size, { kind: 'screen', plan, wishes })) as never[];
      const chosen = chooseTrials(wishes, screened);
      const tried = await withWorkers(size, { kind: 'trial', plan, wishes, chosen });
      expect(summariseSearch(wishes, screened, tried as never)).toEqual(whole);
    }
    expect(candidateCount(wishes)).toBe(96);
    expect(whole.notRunCount).toBeGreaterThan(0);
  });
});

describe('breaking off', () => {
  afterEach(() => vi.useRealTimers());

  const stuck = () => {
    const worker = {
      ended: false,
      asked: [] as CompareRequest[],
      addEventListener: () => {},
      postMessage: (request: CompareRequest) => void worker.asked.push(request),
      terminate: () => {
        worker.ended = true;
      },
    };
    return worker;
  };
  const deaf: JobListener<'spread'> = {
    progress: () => expect.unreachable('a cancelled job reported'),
    done: () => expect.unreachable('a cancelled job ended'),
    failed: () => expect.unreachable('a cancelled job failed'),
  };
  const work = { kind: 'spread', plan, wishes: { caseCount: 500, seed: 1 } } as const;

  test('ends workers that are long at a piece within 100 ms, by the clock', async () => {
    const workers = [stuck(), stuck()];
    let started = 0;
    const pool = createComparePool(2, () => workers[started++]!);
    const job = pool.run<'spread'>(work, 501, deaf);
    expect(pool.busy()).toBe(2);
    const at = performance.now();
    job.cancel();
    while (pool.busy() > 0) await new Promise((resolve) => setTimeout(resolve, 2));
    const tookMs = performance.now() - at;
    expect(workers.map(({ ended }) => ended)).toEqual([true, true]);
    // The timer itself must leave room; the clock check is the promise made to the user.
    expect(patienceMs).toBeLessThan(100);
    expect(tookMs).toBeLessThan(100);
  });

  test('keeps workers that finish their short piece, for the next job', () => {
    vi.useFakeTimers();
    let started = 0;
    const pool = createComparePool(1, () => {
      started += 1;
      return localWorker(
        () => 10,
        () => 10,
      );
    });
    pool.run<'spread'>(work, 501, deaf).cancel();
    vi.advanceTimersByTime(200);
    expect(pool.busy()).toBe(0);
    pool.run<'spread'>({ ...work, wishes: { caseCount: 2, seed: 1 } }, 3, {
      progress: () => {},
      done: () => {},
      failed: () => {},
    });
    expect(started).toBe(1);
  });

  test('the youngest job goes first, and the older one is finished after it', async () => {
    const order: string[] = [];
    const pool = createComparePool(1, () =>
      localWorker(
        () => 0,
        () => 50,
      ),
    );
    await new Promise<void>((resolve) => {
      const listener = (name: string): JobListener<'spread'> => ({
        progress: () => {},
        done: () => {
          order.push(name);
          if (order.length === 2) resolve();
        },
        failed: () => {},
      });
      const wishes = { caseCount: 6, seed: 1 };
      pool.run<'spread'>({ kind: 'spread', plan, wishes }, 7, listener('older'));
      pool.run<'spread'>({ kind: 'spread', plan, wishes }, 7, listener('younger'));
    });
    expect(order).toEqual(['younger', 'older']);
  });
});

test('progress rises to the whole with an estimate of the time left', async () => {
  const seen: { done: number; leftMs: number | null }[] = [];
  const pool = createComparePool(2, () =>
    localWorker(
      () => 1,
      () => 20,
    ),
  );
  const wishes = { caseCount: 12, seed: 1 };
  await new Promise<void>((resolve) => {
    pool.run<'spread'>({ kind: 'spread', plan, wishes }, 13, {
      progress: (progress) => seen.push(progress),
      done: () => resolve(),
      failed: () => {},
    });
  });
  expect(seen.length).toBeGreaterThan(2);
  for (const [at, { done, leftMs }] of seen.entries()) {
    expect(done).toBeGreaterThan(seen[at - 1]?.done ?? 0);
    expect(leftMs).toBeGreaterThan(0);
  }
});
