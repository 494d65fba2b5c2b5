import type { HeadlessHost } from './host.ts';

/** An option of a verb: a flag, or a name with a value. */
export interface VerbOption {
  /** As written, e.g. `--series`. */
  readonly name: string;
  /** Placeholder of the value in the help; absent for a flag. */
  readonly value?: string;
  readonly meaning: string;
  /** May be given more than once. */
  readonly repeats?: boolean;
}

/** What the reader typed, taken apart. */
export interface VerbCall {
  readonly positional: readonly string[];
  /** Last value of an option, or undefined. */
  readonly value: (name: string) => string | undefined;
  /** Every value of an option that may be repeated. */
  readonly values: (name: string) => readonly string[];
  readonly has: (name: string) => boolean;
  readonly host: HeadlessHost;
}

/** 0 done, 3 a finding of severity stop stands; bad input carries the one line that names it. */
export type VerbOutcome = { readonly exit: 0 | 3 } | { readonly exit: 2; readonly line: string };

/** One verb of the command line. A new verb is a file in `verbs/`, named in the table. */
export interface Verb {
  readonly name: string;
  /** What follows the verb, e.g. `FILE [options]`. */
  readonly usage: string;
  /** One line for the list of verbs. */
  readonly summary: string;
  /** Further lines for the verb's own help. */
  readonly details: readonly string[];
  readonly options: readonly VerbOption[];
  /** Least and most arguments that are no options. */
  readonly arguments: readonly [least: number, most: number];
  readonly run: (call: VerbCall) => Promise<VerbOutcome>;
}

export const done: VerbOutcome = { exit: 0 };

/** Refuses with one line: what is wrong and how to mend it. */
export function refuse(line: string): VerbOutcome {
  return { exit: 2, line };
}

/** Options many verbs share. */
export const jsonOption: VerbOption = {
  name: '--json',
  meaning: 'print one JSON document and nothing else',
};
export const outingOption: VerbOption = {
  name: '--outing',
  value: 'ID',
  meaning: 'outing to run instead of the headline outing',
};
export const forceOption: VerbOption = { name: '--force', meaning: 'replace a file that exists' };
export const languageOption: VerbOption = {
  name: '--language',
  value: 'en|de',
  meaning: 'language of the sentences',
};
