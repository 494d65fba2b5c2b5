import '../state/page-policy.ts';
import { compareWays } from '#core/drive/compare-ways.ts';
import { scaleToAverage } from '#core/drive/scale-to-average.ts';
import type { WaysAnswer, WaysRequest } from './ways-message.ts';

/** The part of a dedicated worker's global that is used here; the page's own types describe a window. */
const scope = globalThis as unknown as {
  addEventListener(
    type: 'message',
    listener: (event: { readonly data: WaysRequest }) => void,
  ): void;
  postMessage(answer: WaysAnswer, transfer: readonly ArrayBuffer[]): void;
};

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
      message: error instanceof Error ? error.message : String(error),
    };
  }
};

scope.addEventListener('message', ({ data }) => scope.postMessage(answerTo(data), []));
