/** Opaque name the host gives a file. The page can send it back, and learns nothing from it. */
export type DocumentHandle = string;

/** Largest plan text a host reads or writes [bytes]. */
export const planSizeLimitBytes = 8 * 1024 * 1024;
/** Largest file an export may write [bytes]. */
export const exportSizeLimitBytes = 64 * 1024 * 1024;

export type OpenedPlan = {
  /** Null when there is no file to save to: a dropped text, a recovery copy whose file is gone. */
  readonly handle: DocumentHandle | null;
  /** File name without its folder. */
  readonly name: string;
  /** The file as read, without a byte order mark. The page parses and migrates it with the core. */
  readonly text: string;
  readonly access: 'writable' | 'read-only';
};

export type SaveRequest = {
  /** Null asks the host where to save. */
  readonly handle: DocumentHandle | null;
  readonly text: string;
  /** Proposed file name for a first save; the host adds the ending. */
  readonly suggestedName: string;
  /** Number the page gives to this state of the plan; comes back in the answer. */
  readonly revision: number;
  /** Set only after the user was told that the file changed outside and chose to replace it. */
  readonly replaceChanged: boolean;
};

export type SavedPlan = {
  readonly handle: DocumentHandle | null;
  readonly name: string;
  /** Revision that is now on disk: clear the unsaved mark only if no edit has come since. */
  readonly revision: number;
};

export type RecentFile = {
  readonly id: string;
  readonly name: string;
  readonly available: boolean;
};

export type RecoveryCopy = {
  readonly id: string;
  /** Name of the plan when the copy was written. */
  readonly name: string;
  /** Time of writing, ISO 8601 in UTC. */
  readonly savedAt: string;
  readonly bytes: number;
  /** A damaged copy (length or checksum wrong) can only be discarded. */
  readonly state: 'whole' | 'damaged';
};

/** What the window chrome and the close guard have to know about the plan in the page. */
export type DocumentState = {
  readonly name: string;
  readonly handle: DocumentHandle | null;
  readonly unsaved: boolean;
};

export type ExportKind = 'png' | 'svg' | 'csv' | 'html' | 'json' | 'txt' | 'ics';
export type ExportRequest = {
  readonly kind: ExportKind;
  readonly suggestedName: string;
  readonly content: string | Uint8Array;
};
export type PdfRequest = {
  readonly suggestedName: string;
  readonly paper: 'A4' | 'Letter';
  readonly landscape: boolean;
};

export type BundledPackage = {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
};
export type AboutData = {
  readonly name: string;
  readonly version: string;
  /** Runtime versions, such as `Electron` to `45.5.0`. */
  readonly runtimes: Readonly<Record<string, string>>;
  readonly packages: readonly BundledPackage[];
};

/** Pages outside the program that may be opened, by key only. The host holds the addresses. */
export const linkKeys = ['electron-licence', 'chromium-licences'] as const;
export type LinkKey = (typeof linkKeys)[number];
