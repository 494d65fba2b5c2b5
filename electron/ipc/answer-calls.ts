import { ipcMain, type IpcMainInvokeEvent } from 'electron';
import { callChannels, type CallName, type ShellCalls } from '#core/shell/bridge.ts';
import { exportSizeLimitBytes, planSizeLimitBytes } from '#core/shell/documents.ts';
import { failure, type HostResult } from '#core/shell/failure.ts';
import type { ProblemLog } from '../diagnostics/problem-log.ts';
import { isOwnPage } from '../security/sender.ts';
import { payloadSchemas } from './payloads.ts';

/** The work behind each call; `windowId` is the window that asked, known from the sender. */
export type CallHandlers = {
  readonly [Name in CallName]: (
    payload: ShellCalls[Name]['payload'],
    windowId: number,
  ) => Promise<HostResult<ShellCalls[Name]['value']>>;
};

const exports: ReadonlySet<CallName> = new Set<CallName>(['exportFile', 'copyText']);

/** Bytes of all texts and byte arrays of a payload; the schemas leave nothing else of any size. */
const payloadBytes = (payload: object): number =>
  Object.values(payload).reduce<number>((sum, field: unknown) => {
    if (typeof field === 'string') return sum + Buffer.byteLength(field, 'utf8');
    return field instanceof Uint8Array ? sum + field.byteLength : sum;
  }, 0);

const limitOf = (name: CallName): number =>
  (exports.has(name) ? exportSizeLimitBytes : planSizeLimitBytes) + 4096;

/**
 * Answers the page's calls. The order of the checks is fixed: a known channel (no other has a
 * handler), own main frame and origin, payload, size, and only then the work. A fault in the work
 * becomes an answer too, so that the page never sees an exception with a path in it.
 */
export const answerCalls = (
  handlers: CallHandlers,
  windowIdOf: (event: IpcMainInvokeEvent) => number | null,
  log: ProblemLog,
): void => {
  const answer = async <Name extends CallName>(
    name: Name,
    event: IpcMainInvokeEvent,
    payload: unknown,
  ): Promise<HostResult<ShellCalls[Name]['value']>> => {
    const windowId = isOwnPage(event) ? windowIdOf(event) : null;
    if (windowId === null) {
      log.note('security', `refused ${name} from a foreign sender`);
      return failure('refused');
    }
    const parsed = payloadSchemas[name].safeParse(payload);
    if (!parsed.success) return failure('bad-request');
    if (payloadBytes(parsed.data) > limitOf(name)) return failure('too-large');
    try {
      return await handlers[name](parsed.data, windowId);
    } catch (error) {
      log.note(name, String(error));
      return failure('failed');
    }
  };
  for (const name of Object.keys(callChannels) as CallName[]) {
    ipcMain.handle(callChannels[name], (event, payload: unknown) => answer(name, event, payload));
  }
};
