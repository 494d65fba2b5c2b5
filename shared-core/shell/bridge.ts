import type { CommandId } from '../commands/command-table.ts';
import type { MenuState } from './menu-state.ts';
import type {
  AboutData,
  DocumentHandle,
  DocumentState,
  ExportRequest,
  LinkKey,
  OpenedPlan,
  PdfRequest,
  RecentFile,
  RecoveryCopy,
  SavedPlan,
  SaveRequest,
} from './documents.ts';
import type { HostResult } from './failure.ts';

type Call<Payload, Value> = { readonly payload: Payload; readonly value: Value };
type NoPayload = Record<string, never>;

/** Every call the page can make of the desktop shell: what it sends and what comes back. */
export type ShellCalls = {
  openPlan: Call<NoPayload, OpenedPlan>;
  openDropped: Call<{ name: string; text: string }, OpenedPlan>;
  openRecent: Call<{ id: string }, OpenedPlan>;
  readAgain: Call<{ handle: DocumentHandle }, OpenedPlan>;
  savePlan: Call<SaveRequest, SavedPlan>;
  savePlanAs: Call<SaveRequest, SavedPlan>;
  recentFiles: Call<NoPayload, readonly RecentFile[]>;
  forgetRecentFiles: Call<NoPayload, null>;
  newWindow: Call<NoPayload, null>;
  recoveryCopies: Call<NoPayload, readonly RecoveryCopy[]>;
  takeRecoveryCopy: Call<{ id: string }, OpenedPlan>;
  discardRecoveryCopy: Call<{ id: string }, null>;
  writeRecoveryCopy: Call<{ name: string; text: string }, { readonly savedAt: string }>;
  discardOwnRecoveryCopy: Call<NoPayload, null>;
  setDocumentState: Call<DocumentState, null>;
  setMenuState: Call<MenuState, null>;
  closeSeen: Call<{ id: number }, null>;
  closeAnswer: Call<{ id: number; answer: 'close' | 'stay' }, null>;
  exportFile: Call<ExportRequest, { readonly name: string }>;
  exportPdf: Call<PdfRequest, { readonly name: string }>;
  print: Call<NoPayload, null>;
  report: Call<NoPayload, string>;
  noteProblem: Call<{ message: string }, null>;
  about: Call<NoPayload, AboutData>;
  openLink: Call<{ key: LinkKey }, null>;
  copyText: Call<{ text: string }, null>;
  pageReady: Call<NoPayload, null>;
};
export type CallName = keyof ShellCalls;

/** Stable channel of each call. A channel that is not here does not exist. */
export const callChannels = {
  openPlan: 'plan:open',
  openDropped: 'plan:open-dropped',
  openRecent: 'plan:open-recent',
  readAgain: 'plan:read-again',
  savePlan: 'plan:save',
  savePlanAs: 'plan:save-as',
  recentFiles: 'recent:list',
  forgetRecentFiles: 'recent:forget',
  newWindow: 'window:new',
  recoveryCopies: 'recovery:list',
  takeRecoveryCopy: 'recovery:take',
  discardRecoveryCopy: 'recovery:discard',
  writeRecoveryCopy: 'recovery:write',
  discardOwnRecoveryCopy: 'recovery:discard-own',
  setDocumentState: 'window:document-state',
  setMenuState: 'menu:state',
  closeSeen: 'close:seen',
  closeAnswer: 'close:answer',
  exportFile: 'export:file',
  exportPdf: 'export:pdf',
  print: 'export:print',
  report: 'report:text',
  noteProblem: 'report:note',
  about: 'about:data',
  openLink: 'link:open',
  copyText: 'clipboard:text',
  pageReady: 'window:ready',
} as const satisfies Record<CallName, string>;

/** Every message the shell sends to the page on its own account. */
export type ShellEvents = {
  command: { readonly id: CommandId };
  openRequest: HostResult<OpenedPlan>;
  changedOutside: { readonly handle: DocumentHandle };
  closeRequest: { readonly id: number };
};
export type EventName = keyof ShellEvents;

export const eventChannels = {
  command: 'event:command',
  openRequest: 'event:open-request',
  changedOutside: 'event:changed-outside',
  closeRequest: 'event:close-request',
} as const satisfies Record<EventName, string>;

/** What the preload script puts into the page, and nothing more. */
export type ShellBridge = {
  readonly platform: 'mac' | 'windows' | 'linux';
  readonly version: string;
  readonly call: {
    readonly [Name in CallName]: (
      payload: ShellCalls[Name]['payload'],
    ) => Promise<HostResult<ShellCalls[Name]['value']>>;
  };
  readonly listen: {
    readonly [Name in EventName]: (listener: (message: ShellEvents[Name]) => void) => () => void;
  };
};

/** Name of the bridge on the page's global object. */
export const bridgeName = 'cellwainShell';
/** Origin of the page under the desktop shell. */
export const pageScheme = 'cellwain';
export const pageOrigin = `${pageScheme}://shell`;
