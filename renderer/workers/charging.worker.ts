import '../state/page-policy.ts';
import { failureText } from '../state/failure-text.ts';
import { studyCharging } from '#core/study/study-charging.ts';
import type { ChargingAnswer, ChargingRequest } from './charging-message.ts';
import { workerScope } from './worker-scope.ts';

const scope = workerScope<ChargingRequest, ChargingAnswer>();

const answerTo = ({ ticket, plan, outingId, after, language }: ChargingRequest): ChargingAnswer => {
  try {
    return { kind: 'charging', ticket, study: studyCharging(plan, outingId, after, language) };
  } catch (error) {
    return {
      kind: 'failed',
      ticket,
      message: failureText(error),
    };
  }
};

scope.addEventListener('message', ({ data }) => scope.postMessage(answerTo(data), []));
