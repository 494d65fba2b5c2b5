import { basename } from 'node:path';
import { failure, success } from '#core/shell/failure.ts';
import { fileFailure } from '../files/file-failure.ts';
import { currentMark } from '../files/plan-file.ts';
import { checkPlanText } from '../files/plan-text.ts';
import type { CallHandlers } from './answer-calls.ts';
import type { Shell } from '../shell.ts';

type RecoveryCalls = Pick<
  CallHandlers,
  | 'recoveryCopies'
  | 'takeRecoveryCopy'
  | 'discardRecoveryCopy'
  | 'writeRecoveryCopy'
  | 'discardOwnRecoveryCopy'
>;

export const recoveryCalls = (shell: Shell): RecoveryCalls => {
  const { fs, documents, recovery, windows, now } = shell;

  /** Copies of windows that are open and well are nobody's business. */
  const ownedByOthers = (windowId: number): ReadonlySet<string> =>
    new Set(
      windows
        .all()
        .filter((plan) => plan.id !== windowId || plan.crashes === 0)
        .map((plan) => plan.recoveryId),
    );

  return {
    recoveryCopies: async (_payload, windowId) =>
      success(await recovery.list(ownedByOthers(windowId))),

    takeRecoveryCopy: async ({ id }, windowId) => {
      const plan = windows.get(windowId);
      if (plan === null || ownedByOthers(windowId).has(id)) return failure('unknown-document');
      const content = await recovery.read(id);
      if (content === null) return failure('damaged');
      const { name, text, path } = content;
      const checked = checkPlanText(text, name);
      if (!checked.ok) return checked;
      // Own copy first, the old one goes after: at no moment is there none.
      await recovery.write(plan.recoveryId, content);
      if (id !== plan.recoveryId) await recovery.discard(id);
      const holder = path === null ? null : documents.windowWith(path);
      const isFree = path !== null && (holder === null || holder === windowId);
      const mark = isFree ? await currentMark(fs, path).catch(() => null) : null;
      if (path === null || mark === null) {
        return success({ handle: null, name, text, access: 'writable' as const });
      }
      const { migratedFrom } = checked.value;
      const { handle } = documents.put({ path, windowId, mark, migratedFrom });
      return success({ handle, name: basename(path), text, access: 'writable' as const });
    },

    discardRecoveryCopy: async ({ id }, windowId) => {
      if (ownedByOthers(windowId).has(id)) return failure('unknown-document');
      await recovery.discard(id);
      return success(null);
    },

    writeRecoveryCopy: async ({ name, text }, windowId) => {
      const plan = windows.get(windowId);
      if (plan === null) return failure('unknown-document');
      const savedAt = now().toISOString();
      const path = documents.ofWindow(windowId)?.path ?? null;
      try {
        await recovery.write(plan.recoveryId, { name, savedAt, path, text });
        return success({ savedAt });
      } catch (error) {
        return fileFailure(error, name, 'writing');
      }
    },

    discardOwnRecoveryCopy: async (_payload, windowId) => {
      const plan = windows.get(windowId);
      if (plan !== null) await recovery.discard(plan.recoveryId);
      return success(null);
    },
  };
};
