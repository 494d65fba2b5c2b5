import { expect, test, vi } from 'vitest';
import { newPlan } from '#core/plan/defaults.ts';
import { createStudyClient, type StudyWorker } from '#renderer/workers/study-client.ts';
import type { StudyAnswer, StudyRequest, StudyResult } from '#renderer/workers/study-message.ts';

/** A worker in which answers come when the test says so. */
const fakeWorker = () => {
  const asked: StudyRequest[] = [];
  let listener: ((event: MessageEvent<StudyAnswer>) => void) | null = null;
  const worker: StudyWorker & { ended: boolean } = {
    ended: false,
    addEventListener: (type: string, added: never) => {
      if (type === 'message') listener = added;
    },
    postMessage: (request) => void asked.push(request),
    terminate: () => {
      worker.ended = true;
    },
  };
  const answer = (): void => {
    const { ticket } = asked.at(-1)!;
    listener?.({ data: { kind: 'problems', ticket, problems: [] } } as never);
  };
  return { worker, asked, answer };
};

const request = { plan: newPlan(), outingId: 'outing', language: 'en' } as const;

test('only the latest of several requests is computed after the running one', () => {
  const { worker, asked, answer } = fakeWorker();
  const answers: StudyResult[] = [];
  const client = createStudyClient(
    () => worker,
    (got) => answers.push(got),
  );
  client.ask(request);
  client.ask(request);
  client.ask(request);
  expect(asked.map(({ ticket }) => ticket)).toEqual([1]);
  answer();
  expect(asked.map(({ ticket }) => ticket)).toEqual([1, 3]);
  expect(answers).toEqual([]);
  answer();
  expect(answers.map(({ ticket }) => ticket)).toEqual([3]);
});

test('a worker that is long at an outdated request is replaced', () => {
  vi.useFakeTimers();
  const workers = [fakeWorker(), fakeWorker()];
  let started = 0;
  const client = createStudyClient(
    () => workers[started++]!.worker,
    () => {},
  );
  client.ask(request);
  client.ask(request);
  vi.advanceTimersByTime(1000);
  expect(workers[0]?.worker.ended).toBe(true);
  expect(workers[1]?.asked.map(({ ticket }) => ticket)).toEqual([2]);
  vi.useRealTimers();
});

test('a cancelled request is not answered', () => {
  const { worker, answer } = fakeWorker();
  const answers: StudyResult[] = [];
  const client = createStudyClient(
    () => worker,
    (got) => answers.push(got),
  );
  client.ask(request);
  client.cancel();
  answer();
  expect(worker.ended).toBe(true);
  expect(answers).toEqual([]);
});
