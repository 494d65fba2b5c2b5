import { runHeadless, type HeadlessHost } from '#core/headless/main.ts';

/** What a command did: exit code, both outputs, files as they stand afterwards. */
export interface CommandResult {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly files: ReadonlyMap<string, string>;
}

function failure(code: string): Error {
  return Object.assign(new Error(code), { code });
}

/** Runs one command against files held in memory. */
export async function command(
  argv: readonly string[],
  given: Readonly<Record<string, string>> = {},
): Promise<CommandResult> {
  const files = new Map(Object.entries(given));
  let out = '';
  let err = '';
  const host: HeadlessHost = {
    readText: (path) => {
      const text = files.get(path);
      return text === undefined ? Promise.reject(failure('ENOENT')) : Promise.resolve(text);
    },
    writeText: (path, text, { overwrite }) => {
      if (files.has(path) && !overwrite) return Promise.reject(failure('EEXIST'));
      files.set(path, text);
      return Promise.resolve();
    },
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  };
  const code = await runHeadless(argv, host);
  return { code, out, err, files };
}
