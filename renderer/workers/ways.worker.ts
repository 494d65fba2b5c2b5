import '../state/page-policy.ts';
import { failureText } from '../state/failure-text.ts';
import { compareWays } from '#core/drive/compare-ways.ts';
import { scaleToAverage } from '#core/drive/scale-to-average.ts';
import type { WaysAnswer, WaysRequest } from './ways-message.ts';
import { workerScope } from './worker-scope.ts';

const scope = workerScope<WaysRequest, WaysAnswer>();

const answerTo = (request: WaysRequest): WaysAnswer => {
  const { ticket, machine, outing } = request;
  try {
    if (request.kind === 'compare')
      return { kind: 'compared', ticket, rows: compareWays(machine, request.options, outing) };
    const scale = scaleToAverage(machine, request.option, outing, request.way);
    return { kind: 'scaled', ticket, scale };
  } catch (error) {
    return {
      kind: 'failed',
      ticket,
      message: failureText(error),
    };
  }
};

scope.addEventListener('message', ({ data }) => scope.postMessage(answerTo(data), []));
