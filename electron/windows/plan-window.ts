import { randomUUID } from 'node:crypto';
import type { BrowserWindow } from 'electron';
import { eventChannels, type EventName, type ShellEvents } from '#core/shell/bridge.ts';
import type { DocumentState } from '#core/shell/documents.ts';
import type { MenuState } from '#core/shell/menu-state.ts';
import { createCloseGuard, type CloseGuard } from './close-guard.ts';
import { windowTitle } from './title.ts';

/** One window with its one plan, as the shell knows it. */
export type PlanWindow = {
  readonly id: number;
  readonly window: BrowserWindow;
  /** Name of the recovery copy this window writes. */
  readonly recoveryId: string;
  readonly guard: CloseGuard;
  state: DocumentState;
  /** Null until the page has said how its menu reads. */
  menu: MenuState | null;
  /** True once the page listens; until then messages wait. */
  ready: boolean;
  readonly waiting: (() => void)[];
  /** True once the user or the page has agreed that the window goes. */
  mayClose: boolean;
  /** Times the page has crashed. */
  crashes: number;
  /** Checksum of a foreign version the page was already told of. */
  reportedMark: string | null;
};

export const sendTo = <Name extends EventName>(
  plan: PlanWindow,
  name: Name,
  message: ShellEvents[Name],
): void => {
  const send = (): void => {
    if (!plan.window.isDestroyed()) plan.window.webContents.send(eventChannels[name], message);
  };
  if (plan.ready) send();
  else plan.waiting.push(send);
};

export const createPlanWindow = (window: BrowserWindow): PlanWindow => {
  const plan: PlanWindow = {
    id: window.id,
    window,
    recoveryId: randomUUID(),
    guard: createCloseGuard((id) => sendTo(plan, 'closeRequest', { id })),
    state: { name: '', handle: null, unsaved: false },
    menu: null,
    ready: false,
    waiting: [],
    mayClose: false,
    crashes: 0,
    reportedMark: null,
  };
  return plan;
};

/** The page listens now: what has waited goes out in order. */
export const markReady = (plan: PlanWindow): void => {
  plan.ready = true;
  for (const send of plan.waiting.splice(0)) send();
};

/** A page about to load anew does not listen until it says so again. */
export const markLoading = (plan: PlanWindow): void => {
  plan.ready = false;
  plan.guard.giveUp();
};

/** Title, unsaved mark and represented file follow the plan. */
export const showDocumentState = (plan: PlanWindow, path: string | null): void => {
  const { name, unsaved } = plan.state;
  plan.window.setTitle(windowTitle(name, unsaved));
  plan.window.setDocumentEdited(unsaved);
  plan.window.setRepresentedFilename(path ?? '');
};
