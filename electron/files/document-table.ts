import { randomUUID } from 'node:crypto';
import type { DocumentHandle } from '#core/shell/documents.ts';
import type { FileMark } from './file-mark.ts';

export type OpenDocument = {
  readonly handle: DocumentHandle;
  readonly path: string;
  /** Window the handle was given to; no other may use it. */
  readonly windowId: number;
  readonly mark: FileMark | null;
  readonly migratedFrom: number | null;
};

/** What each window has open. Handles are random, so that a page cannot guess another's. */
export const createDocumentTable = () => {
  const documents = new Map<DocumentHandle, OpenDocument>();
  const dropOf = (windowId: number): void => {
    for (const [handle, document] of documents) {
      if (document.windowId === windowId) documents.delete(handle);
    }
  };
  return {
    /** Gives a window its document; what it had before is let go. */
    put: (document: Omit<OpenDocument, 'handle'>): OpenDocument => {
      const same = [...documents.values()].find(
        (entry) => entry.windowId === document.windowId && entry.path === document.path,
      );
      dropOf(document.windowId);
      const kept = { ...document, handle: same?.handle ?? randomUUID() };
      documents.set(kept.handle, kept);
      return kept;
    },
    get: (handle: DocumentHandle, windowId: number): OpenDocument | null => {
      const document = documents.get(handle);
      return document?.windowId === windowId ? document : null;
    },
    ofWindow: (windowId: number): OpenDocument | null =>
      [...documents.values()].find((document) => document.windowId === windowId) ?? null,
    windowWith: (path: string): number | null =>
      [...documents.values()].find((document) => document.path === path)?.windowId ?? null,
    dropOf,
  };
};
export type DocumentTable = ReturnType<typeof createDocumentTable>;
