import '../state/page-policy.ts';
import { failureText } from '../state/failure-text.ts';
import { checkPlan } from '#core/plan/read-plan.ts';
import { createRepeatedStudy } from '#core/study/study-again.ts';
import { createOptionSender } from './sent-options.ts';
import type { StudyAnswer, StudyRequest } from './study-message.ts';
import { workerScope } from './worker-scope.ts';

const scope = workerScope<StudyRequest, StudyAnswer>();
const studyAgain = createRepeatedStudy();
const send = createOptionSender();

const answerTo = ({ ticket, plan, outingId, language }: StudyRequest): StudyAnswer => {
  try {
    const checked = checkPlan(plan, language);
    if (!checked.ok) return { kind: 'problems', ticket, problems: checked.problems };
    const { options, ...study } = studyAgain(checked.plan, outingId, language);
    return { kind: 'study', ticket, study, options: send(options) };
  } catch (error) {
    return {
      kind: 'failed',
      ticket,
      message: failureText(error),
    };
  }
};

scope.addEventListener('message', ({ data }) => {
  // Copied, not handed over: the worker needs the runs again for the findings of the next edit.
  scope.postMessage(answerTo(data), []);
});
