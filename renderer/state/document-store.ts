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
  /** File name; null while the plan was never saved. */
  readonly fileName: string | null;
  readonly dialog: OpenDialog | null;
}

export const useDocument = create<DocumentState>(() => ({
  host: null,
  handle: null,
  fileName: null,
  dialog: null,
}));

export const openDialog = (dialog: OpenDialog): void => useDocument.setState({ dialog });
export const closeDialog = (): void => useDocument.setState({ dialog: null });

/** The host, which is there before anything is shown. */
export function theHost(): Host {
  const { host } = useDocument.getState();
  if (host === null) throw new Error('The host is set before the window is shown');
  return host;
}
