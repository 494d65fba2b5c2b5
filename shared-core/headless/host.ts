/** What the command line needs of its surroundings; the Node side and the tests bring their own. */
export interface HeadlessHost {
  /** Text of a file, or of standard input for `-`. Rejects with a `code` such as ENOENT. */
  readonly readText: (path: string) => Promise<string>;
  /**
   * Text of a file piece by piece, cut anywhere, for logs that would not fit in memory; without it a file is read whole.
   * Rejects as `readText` does.
   */
  readonly readPieces?: (path: string) => AsyncIterable<string>;
  /** Writes a file. Rejects with code EEXIST where it exists and may not be replaced. */
  readonly writeText: (
    path: string,
    text: string,
    options: { readonly overwrite: boolean },
  ) => Promise<void>;
  /** The same for bytes; a host without it writes no PDF. */
  readonly writeBytes?: (
    path: string,
    bytes: Uint8Array,
    options: { readonly overwrite: boolean },
  ) => Promise<void>;
  /** Prints an HTML file that needs nothing else into a PDF; null where no browser is found. */
  readonly printPdf?: (html: string) => Promise<Uint8Array | null>;
  /** Version of the program, for what it prints. */
  readonly version?: () => string;
  /** Today as year-month-day, for records that carry a date; a host without a clock leaves it out. */
  readonly today?: () => string;
  /** Standard output. */
  readonly out: (text: string) => void;
  /** Standard error. */
  readonly err: (text: string) => void;
}
