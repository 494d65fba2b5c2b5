import { clipboard, shell as system } from 'electron';
import { failure, success } from '#core/shell/failure.ts';
import { reportText } from '../diagnostics/report.ts';
import { linkAddresses } from '#core/shell/links.ts';
import { markReady, showDocumentState } from '../windows/plan-window.ts';
import type { CallHandlers } from './answer-calls.ts';
import type { Shell } from '../shell.ts';

type WindowCalls = Pick<
  CallHandlers,
  | 'newWindow'
  | 'setDocumentState'
  | 'setMenuState'
  | 'closeSeen'
  | 'closeAnswer'
  | 'report'
  | 'noteProblem'
  | 'about'
  | 'openLink'
  | 'copyText'
  | 'pageReady'
>;

export const windowCalls = (shell: Shell): WindowCalls => {
  const { windows, documents, log } = shell;
  return {
    newWindow: async () => {
      windows.open();
      return success(null);
    },
    setDocumentState: async (state, windowId) => {
      const plan = windows.get(windowId);
      if (plan === null) return failure('unknown-document');
      // A plan without a file of its own lets go of the one before it, but not of one that a first
      // save is about to give it.
      if (state.handle === null && plan.state.handle !== null) documents.dropOf(windowId);
      plan.state = state;
      showDocumentState(plan, documents.ofWindow(windowId)?.path ?? null);
      return success(null);
    },
    setMenuState: async (state, windowId) => {
      const plan = windows.get(windowId);
      if (plan === null) return failure('unknown-document');
      plan.menu = state;
      shell.menuChanged();
      return success(null);
    },
    closeSeen: async ({ id }, windowId) => {
      windows.get(windowId)?.guard.seen(id);
      return success(null);
    },
    closeAnswer: async ({ id, answer }, windowId) => {
      windows.get(windowId)?.guard.answer(id, answer);
      return success(null);
    },
    report: async () =>
      success(reportText(await shell.about(), shell.system, log.lines(), shell.home)),
    noteProblem: async ({ message }) => {
      log.note('page', message);
      return success(null);
    },
    about: async () => success(await shell.about()),
    openLink: async ({ key }) => {
      await system.openExternal(linkAddresses[key]);
      return success(null);
    },
    copyText: async ({ text }) => {
      await clipboard.writeText(text);
      return success(null);
    },
    pageReady: async (_payload, windowId) => {
      const plan = windows.get(windowId);
      if (plan !== null) markReady(plan);
      return success(null);
    },
  };
};
