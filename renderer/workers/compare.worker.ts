import '../state/page-policy.ts';
import { failureText } from '../state/failure-text.ts';
import { openWork, type OpenWork, type WorkKind } from '#core/compare/work/work.ts';
import { buffersOf } from './buffers-of.ts';
import type { CompareAnswer, CompareRequest } from './compare-message.ts';
import { workerScope } from './worker-scope.ts';

const scope = workerScope<CompareRequest, CompareAnswer>();

/** Work of the last jobs; a pool serves few at a time. */
const opened = new Map<number, OpenWork<WorkKind>>();
const kept = 12;

function answerTo(request: CompareRequest): CompareAnswer | null {
  const { job } = request;
  try {
    if (request.kind === 'open') {
      opened.set(job, openWork(request.work));
      for (const old of opened.keys()) if (opened.size > kept) opened.delete(old);
      return null;
    }
    const { from, to } = request;
    const work = opened.get(job);
    if (work === undefined) throw new Error(`Job ${job} was not opened`);
    const start = performance.now();
    const part = work.part(from, to);
    return { kind: 'done', job, from, to, part, tookMs: performance.now() - start };
  } catch (error) {
    return { kind: 'failed', job, message: failureText(error) };
  }
}

scope.addEventListener('message', ({ data }) => {
  const answer = answerTo(data);
  if (answer !== null)
    scope.postMessage(answer, answer.kind === 'done' ? buffersOf(answer.part) : []);
});
