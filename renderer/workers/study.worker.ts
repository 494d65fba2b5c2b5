import '../state/page-policy.ts';
import { checkPlan } from '#core/plan/read-plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { buffersOf } from './buffers-of.ts';
import type { StudyAnswer, StudyRequest } from './study-message.ts';

/** The part of a dedicated worker's global that is used here; the page's own types describe a window. */
const scope = globalThis as unknown as {
  addEventListener(
    type: 'message',
    listener: (event: { readonly data: StudyRequest }) => void,
  ): void;
  postMessage(answer: StudyAnswer, transfer: readonly ArrayBuffer[]): void;
};

const answerTo = ({ ticket, plan, outingId, language }: StudyRequest): StudyAnswer => {
  try {
    const checked = checkPlan(plan, language);
    if (!checked.ok) return { kind: 'problems', ticket, problems: checked.problems };
    return { kind: 'study', ticket, study: studyPlan(checked.plan, outingId, language) };
  } catch (error) {
    return {
      kind: 'failed',
      ticket,
      message: error instanceof Error ? error.message : String(error),
    };
  }
};

scope.addEventListener('message', ({ data }) => {
  const answer = answerTo(data);
  scope.postMessage(answer, answer.kind === 'study' ? buffersOf(answer.study) : []);
});
