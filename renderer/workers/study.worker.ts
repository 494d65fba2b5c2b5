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

/** Studies made for nothing after the first, each so long [ms] after what went before. */
const practiceRounds = 2;
const practicePauseMs = 250;
/** A plan whose study takes longer [ms] is not practised on: an edit would have to wait for it. */
const practiceMostMs = 400;
let asked = 0;

/** Code that has run once or twice is still slow; the first edits should not pay for that. */
function practise({ plan, outingId, language }: StudyRequest, left: number): void {
  const before = asked;
  setTimeout(() => {
    if (asked !== before || left === 0) return;
    const checked = checkPlan(plan, language);
    if (checked.ok) createRepeatedStudy()(checked.plan, outingId, language);
    practise({ ticket: 0, plan, outingId, language }, left - 1);
  }, practicePauseMs);
}

scope.addEventListener('message', ({ data }) => {
  asked += 1;
  const begun = performance.now();
  const answer = answerTo(data);
  // Copied, not handed over: the worker needs the runs again for the findings of the next edit.
  scope.postMessage(answer, []);
  const isQuick = performance.now() - begun < practiceMostMs;
  if (asked === 1 && answer.kind === 'study' && isQuick) practise(data, practiceRounds);
});
