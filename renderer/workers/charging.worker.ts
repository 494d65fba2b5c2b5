import '../state/page-policy.ts';
import { studyCharging } from '#core/study/study-charging.ts';
import type { ChargingAnswer, ChargingRequest } from './charging-message.ts';

/** The part of a dedicated worker's global that is used here; the page's own types describe a window. */
const scope = globalThis as unknown as {
  addEventListener(
    type: 'message',
    listener: (event: { readonly data: ChargingRequest }) => void,
  ): void;
  postMessage(answer: ChargingAnswer, transfer: readonly ArrayBuffer[]): void;
};

const answerTo = ({ ticket, plan, outingId, after, language }: ChargingRequest): ChargingAnswer => {
  try {
    return { kind: 'charging', ticket, study: studyCharging(plan, outingId, after, language) };
  } catch (error) {
    return {
      kind: 'failed',
      ticket,
      message: error instanceof Error ? error.message : String(error),
    };
  }
};

scope.addEventListener('message', ({ data }) => scope.postMessage(answerTo(data), []));
