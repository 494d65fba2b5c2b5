import '../state/page-policy.ts';
import { failureText } from '../state/failure-text.ts';
import { checkPlan } from '#core/plan/read-plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { buffersOf } from './buffers-of.ts';
import type { StudyAnswer, StudyRequest } from './study-message.ts';
import { workerScope } from './worker-scope.ts';

const scope = workerScope<StudyRequest, StudyAnswer>();

const answerTo = ({ ticket, plan, outingId, language }: StudyRequest): StudyAnswer => {
  try {
    const checked = checkPlan(plan, language);
    if (!checked.ok) return { kind: 'problems', ticket, problems: checked.problems };
    return { kind: 'study', ticket, study: studyPlan(checked.plan, outingId, language) };
  } catch (error) {
    return {
      kind: 'failed',
      ticket,
      message: failureText(error),
    };
  }
};

scope.addEventListener('message', ({ data }) => {
  const answer = answerTo(data);
  scope.postMessage(answer, answer.kind === 'study' ? buffersOf(answer.study) : []);
});
