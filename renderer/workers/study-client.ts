import { createOptionReceiver } from './sent-options.ts';
import type { StudyAnswer, StudyRequest, StudyResult } from './study-message.ts';

/** The few things a client needs of a worker; tests give their own. */
export interface StudyWorker {
  addEventListener(type: 'message', listener: (event: MessageEvent<StudyAnswer>) => void): void;
  addEventListener(type: 'error', listener: (event: ErrorEvent) => void): void;
  postMessage(request: StudyRequest, transfer: Transferable[]): void;
  terminate(): void;
}

export interface StudyClient {
  /** Asks for a study. Only the latest request is answered; a worker that is long at an older one is replaced. */
  ask(request: Omit<StudyRequest, 'ticket'>): void;
  /** Drops what is being computed; the result shown before stays. */
  cancel(): void;
  close(): void;
}

/** A worker that has been at an outdated request for this long [ms] is ended rather than waited for. */
const patienceMs = 300;

export function createStudyClient(
  startWorker: () => StudyWorker,
  onAnswer: (answer: StudyResult) => void,
  now: () => number = () => performance.now(),
): StudyClient {
  let worker: StudyWorker | null = null;
  let ticket = 0;
  let busySince: number | null = null;
  let waiting: StudyRequest | null = null;
  let patience: ReturnType<typeof setTimeout> | undefined;

  const drop = (): void => {
    worker?.terminate();
    worker = null;
    busySince = null;
    clearTimeout(patience);
  };

  const send = (request: StudyRequest): void => {
    worker ??= begin();
    waiting = null;
    busySince = now();
    worker.postMessage(request, []);
  };

  const begin = (): StudyWorker => {
    const started = startWorker();
    const receive = createOptionReceiver();
    started.addEventListener('message', ({ data }) => {
      busySince = null;
      clearTimeout(patience);
      // Of outdated answers, too: the next one builds on them.
      const result: StudyResult =
        data.kind === 'study'
          ? {
              kind: 'study',
              ticket: data.ticket,
              study: { ...data.study, options: receive(data.options) },
            }
          : data;
      if (waiting !== null) send(waiting);
      else if (result.ticket === ticket) onAnswer(result);
    });
    started.addEventListener('error', (event) => {
      event.preventDefault();
      drop();
      onAnswer({ kind: 'failed', ticket, message: event.message });
    });
    return started;
  };

  return {
    ask(request) {
      ticket += 1;
      const next = { ...request, ticket };
      if (busySince === null) return send(next);
      waiting = next;
      clearTimeout(patience);
      patience = setTimeout(
        () => {
          if (waiting === null) return;
          const latest = waiting;
          drop();
          send(latest);
        },
        Math.max(0, patienceMs - (now() - busySince)),
      );
    },
    cancel() {
      ticket += 1;
      waiting = null;
      if (busySince !== null) drop();
    },
    close: drop,
  };
}
