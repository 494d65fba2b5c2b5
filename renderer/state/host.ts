import type { CommandId } from '#core/commands/command-table.ts';
import type {
  AboutData,
  DocumentState,
  ExportRequest,
  LinkKey,
  OpenedPlan,
  PdfRequest,
  RecentFile,
  RecoveryCopy,
  SavedPlan,
  SaveRequest,
  DocumentHandle,
} from '#core/shell/documents.ts';
import type { HostResult } from '#core/shell/failure.ts';
import type { MenuState } from '#core/shell/menu-state.ts';

export type Unsubscribe = () => void;

/**
 * All the page can ask of the program around it. Two implementations: the desktop shell through its
 * preload bridge, and the browser. No call rejects for something a user can cause; each such case
 * is a failure with a code. Paths never pass: the page holds opaque handles and display names.
 */
export type Host = {
  readonly kind: 'desktop' | 'browser';
  readonly platform: 'mac' | 'windows' | 'linux';
  readonly version: string;
  /** True when a native menu answers shortcuts, so that the page must not answer them again. */
  readonly menuAnswersShortcuts: boolean;

  /** Asks for a file. `cancelled` when the user backs out. */
  openPlan(): Promise<HostResult<OpenedPlan>>;
  /** Checks a text that was dropped into the page; the plan it gives has no handle. */
  openDropped(name: string, text: string): Promise<HostResult<OpenedPlan>>;
  openRecent(id: string): Promise<HostResult<OpenedPlan>>;
  /** Reads the file again: revert, or after a change outside. */
  readAgain(handle: DocumentHandle): Promise<HostResult<OpenedPlan>>;
  /** `changed-outside` when another program wrote the file since; ask, then repeat with `replaceChanged`. */
  savePlan(request: SaveRequest): Promise<HostResult<SavedPlan>>;
  /** Always asks where. The handle in the request, if any, only proposes folder and name. */
  savePlanAs(request: SaveRequest): Promise<HostResult<SavedPlan>>;
  recentFiles(): Promise<readonly RecentFile[]>;
  forgetRecentFiles(): Promise<void>;
  /** An empty window beside this one; with an id, the recent file in it. */
  newWindow(): Promise<void>;

  /** Copies left by windows that ended without closing; those of open windows are not listed. */
  recoveryCopies(): Promise<readonly RecoveryCopy[]>;
  /** Reads a copy and makes it this window's own; the handle is the plan's file if it still exists. */
  takeRecoveryCopy(id: string): Promise<HostResult<OpenedPlan>>;
  discardRecoveryCopy(id: string): Promise<void>;
  /** Write 1 s after an edit. Each window has one copy; a later one replaces it whole. */
  writeRecoveryCopy(name: string, text: string): Promise<HostResult<{ readonly savedAt: string }>>;
  /** After a save, a revert or a chosen discard. */
  discardOwnRecoveryCopy(): Promise<void>;

  /** Title, unsaved mark, represented file, close guard. Call at each change of any of the three. */
  setDocumentState(state: DocumentState): void;
  /** Words of the native menu and what in it cannot act now. Call when any of it changes. */
  setMenuState(state: MenuState): void;
  onCommand(listener: (id: CommandId) => void): Unsubscribe;
  /** A plan chosen outside the page: file association, second launch, recent menu. */
  onOpenRequest(listener: (result: HostResult<OpenedPlan>) => void): Unsubscribe;
  /** The file of this window was written by another program (found on focus). */
  onChangedOutside(listener: (handle: DocumentHandle) => void): Unsubscribe;
  /**
   * The window wants to close and the plan is unsaved. Ask the user (save, discard, stay); answer
   * `close` once saved or discarded. Only one listener at a time.
   */
  onCloseRequest(listener: () => Promise<'close' | 'stay'>): Unsubscribe;

  /**
   * The one way out for every export, of a chart, a table, a sheet, a calendar or the plan: asks
   * where to save, asks before replacing, writes whole. Gives the file name written.
   * Prefer `exportAs(kind, suggestedName, content)`, which also says how it went.
   */
  exportFile(request: ExportRequest): Promise<HostResult<{ readonly name: string }>>;
  /** Prints the page as it stands under print styles into a PDF; `unsupported` in a browser. */
  exportPdf(request: PdfRequest): Promise<HostResult<{ readonly name: string }>>;
  print(): Promise<HostResult<null>>;
  /** Versions and the last problems, with personal paths taken out; for the clipboard. */
  report(): Promise<string>;
  /** Keeps a line about a failure in the page for the report. Stays on this machine. */
  noteProblem(message: string): void;
  about(): Promise<AboutData>;
  openLink(key: LinkKey): Promise<void>;
  copyText(text: string): Promise<HostResult<null>>;
};
