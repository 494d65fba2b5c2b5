import { create } from 'zustand';
import type { DocumentHandle, RecoveryCopy } from '#core/shell/documents.ts';
import type { HostFailure } from '#core/shell/failure.ts';
import type { Host } from './host.ts';

/** A question or a message in front of the window; one at a time. */
export type OpenDialog =
  | {
      readonly kind: 'failure';
      readonly failure: HostFailure;
      readonly during: 'open' | 'save' | 'export';
    }
  | { readonly kind: 'unsaved'; readonly answer: (choice: 'save' | 'discard' | 'stay') => void }
  | {
      readonly kind: 'changed-outside';
      readonly answer: (choice: 'replace' | 'read' | 'stay') => void;
    }
  | { readonly kind: 'recovery'; readonly copies: readonly RecoveryCopy[] }
  | { readonly kind: 'palette' }
  | { readonly kind: 'shortcuts' }
  | { readonly kind: 'samples' }
  | { readonly kind: 'new-plan' }
  | { readonly kind: 'about' }
  | { readonly kind: 'formulas' };

interface DocumentState {
  readonly host: Host | null;
  readonly handle: DocumentHandle | null;
  /** A read-only file is never written: saving asks for another name. */
  readonly access: 'writable' | 'read-only';
  /** File name; null while the plan was never saved. */
  readonly fileName: string | null;
  readonly dialog: OpenDialog | null;
  /** Dialogs whose turn comes when the one in front is closed. */
  readonly waiting: readonly OpenDialog[];
}

export const useDocument = create<DocumentState>(() => ({
  host: null,
  handle: null,
  access: 'writable',
  fileName: null,
  dialog: null,
  waiting: [],
}));

/** What somebody waits for, or the user must not miss: it stays in front until it is closed. */
const mustNotGo: ReadonlySet<OpenDialog['kind']> = new Set([
  'unsaved',
  'changed-outside',
  'failure',
  'recovery',
]);

/**
 * Puts a dialog in front, or behind the one that must be dealt with first. A question that another
 * displaced would never be answered, and whoever asked it would wait for good.
 */
export const openDialog = (dialog: OpenDialog): void =>
  useDocument.setState(({ dialog: front, waiting }) =>
    front !== null && mustNotGo.has(front.kind)
      ? { waiting: [...waiting, dialog] }
      : { dialog, waiting },
  );
export const closeDialog = (): void =>
  useDocument.setState(({ waiting }) => ({
    dialog: waiting[0] ?? null,
    waiting: waiting.slice(1),
  }));

/** The host, which is there before anything is shown. */
export function theHost(): Host {
  const { host } = useDocument.getState();
  if (host === null) throw new Error('The host is set before the window is shown');
  return host;
}
