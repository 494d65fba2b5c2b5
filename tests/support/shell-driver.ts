import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, inject, onTestFinished } from 'vitest';
import type { HostResult } from '#core/shell/failure.ts';
import type { CallName, EventName, ShellBridge, ShellCalls } from '#core/shell/bridge.ts';

const register = fileURLToPath(new URL('./electron-standin/register.mjs', import.meta.url));

type Reply = { id: number; value?: unknown; error?: string };

export type WindowFacts = {
  id: number;
  title: string;
  edited: boolean;
  represented: string;
  bounds: { x: number; y: number; width: number; height: number };
  focused: boolean;
  url: string;
};
export type Seen = {
  dialogs: { kind: string; options: Record<string, unknown> }[];
  opened: string[];
  copied: string[];
  printed: unknown[];
};
export type Heard = { name: EventName; message: Record<string, unknown> };

/** What page-side code in a test can reach. */
export type TestPage = {
  cellwainShell: ShellBridge;
  heard: Heard[];
  closeAnswer: 'close' | 'stay';
  answersClose: boolean;
  standinViolations: string[];
  standinInvoke: (channel: string, payload: unknown) => Promise<unknown>;
};

export type ShellOptions = {
  /** Folder for documents and settings; a fresh one that is removed unless given. */
  readonly folder?: string;
  readonly argv?: readonly string[];
  readonly shell?: string;
  /** Environment added for this start. */
  readonly env?: Readonly<Record<string, string>>;
};

const temporaryFolder = (): string => mkdtempSync(join(tmpdir(), 'shell-data-'));

export const freshFolder = (): string => {
  const folder = temporaryFolder();
  onTestFinished(() => rmSync(folder, { recursive: true, force: true, maxRetries: 3 }));
  return folder;
};

/** A running shell under the stand-in, driven from the test. */
export class RunningShell {
  readonly child: ChildProcess;
  readonly folder: string;
  readonly ended: Promise<number | null>;
  errors = '';
  #next = 1;
  readonly #open = new Map<number, (reply: Reply) => void>();

  constructor(options: ShellOptions) {
    this.folder = options.folder ?? freshFolder();
    const shell = options.shell ?? inject('shellFolder');
    const main = join(shell, 'dist', 'main', 'main.js');
    this.child = spawn(process.execPath, ['--import', register, main, ...(options.argv ?? [])], {
      stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
      env: {
        ...process.env,
        ...options.env,
        STANDIN_FOLDER: this.folder,
        STANDIN_BROWSER: inject('browserAddress'),
        STANDIN_VERSION: '0.1.0',
      },
    });
    this.child.stderr?.setEncoding('utf8').on('data', (text: string) => {
      this.errors += text;
    });
    this.child.on('message', (reply: Reply) => {
      this.#open.get(reply.id)?.(reply);
      this.#open.delete(reply.id);
    });
    this.ended = new Promise((resolve) => {
      this.child.once('exit', (code) => resolve(code));
    });
  }

  async command<T>(name: string, argument: unknown = {}): Promise<T> {
    const id = this.#next;
    this.#next += 1;
    const reply = new Promise<Reply>((resolve, reject) => {
      this.#open.set(id, resolve);
      void this.ended.then((code) =>
        reject(new Error(`The shell ended (${code}): ${this.errors}`)),
      );
    });
    this.child.send({ id, name, argument });
    const { value, error } = await reply;
    if (error !== undefined) throw new Error(error);
    return value as T;
  }

  windows(): Promise<WindowFacts[]> {
    return this.command('windows');
  }

  /** Runs a function in the page; it must not refer to anything of the test but its argument. */
  inPage<A, R>(run: (argument: A) => R, argument?: A, index = 0): Promise<Awaited<R>> {
    return this.command('evaluate', { index, source: run.toString(), argument });
  }

  /** Calls the shell as the page does. */
  call<Name extends CallName>(
    name: Name,
    payload: ShellCalls[Name]['payload'],
    index = 0,
  ): Promise<HostResult<ShellCalls[Name]['value']>> {
    return this.inPage(
      async ([callName, content]) => {
        const { call } = (globalThis as unknown as TestPage).cellwainShell;
        return (call[callName] as (value: unknown) => Promise<never>)(content);
      },
      [name, payload] as const,
      index,
    );
  }

  /** Presses what a user would, found by its role and whole name; waits until it is there. */
  press(role: string, name: string, within = 'body', index = 0): Promise<void> {
    return this.command('press', { index, role, name, within });
  }

  fill(role: string, name: string, text: string, index = 0): Promise<void> {
    return this.command('fill', { index, role, name, text });
  }

  stroke(keys: string, index = 0): Promise<void> {
    return this.command('stroke', { index, keys });
  }

  value(role: string, name: string, index = 0): Promise<string> {
    return this.command('value', { index, role, name });
  }

  /** Text of an element; waits until it is there. */
  text(role: string, name: string, index = 0): Promise<string> {
    return this.command('text', { index, role, name });
  }

  /** How many such elements there are now. */
  count(role: string, name: string, index = 0): Promise<number> {
    return this.command('count', { index, role, name });
  }

  heard(index = 0): Promise<Heard[]> {
    return this.inPage(
      () => (globalThis as unknown as Partial<TestPage>).heard ?? [],
      undefined,
      index,
    );
  }

  seen(): Promise<Seen> {
    return this.command('seen');
  }

  answer(kind: 'open' | 'save' | 'message', ...replies: (string | number)[]): Promise<void> {
    return this.command('answerDialogs', { kind, replies });
  }

  kill(): Promise<number | null> {
    this.child.kill('SIGKILL');
    return this.ended;
  }
}

/** Asks again until the answer satisfies. The limit is for a fault; a loaded machine stays below it. */
export const eventually = async <T>(
  ask: () => Promise<T>,
  satisfies: (answer: T) => boolean,
): Promise<T> => {
  const end = Date.now() + 20_000;
  for (;;) {
    const answer = await ask();
    if (satisfies(answer)) return answer;
    if (Date.now() > end) throw new Error(`Still ${JSON.stringify(answer)} after 20 s`);
    await new Promise((resolve) => setTimeout(resolve, 30));
  }
};

const untilReady = async (shell: RunningShell): Promise<RunningShell> => {
  await eventually(
    () =>
      shell
        .inPage(() => 'cellwainShell' in globalThis && document.readyState === 'complete')
        .catch((error: unknown) => {
          if (shell.child.exitCode !== null) throw error;
          return false;
        }),
    (ready) => ready,
  );
  // Shown and in front a moment after the page stands; the menu acts on the window in front.
  await eventually(
    () => shell.windows(),
    (all) => all.some(({ focused }) => focused),
  );
  return shell;
};

/** Starts the shell for one test and waits for its first page to listen. */
export const startShell = async (options: ShellOptions = {}): Promise<RunningShell> => {
  const shell = new RunningShell({ ...options, folder: options.folder ?? freshFolder() });
  onTestFinished(async () => {
    await shell.kill();
  });
  return untilReady(shell);
};

/** Starts one shell for all tests of a group that leave no trace in it. */
export const sharedShell = (): (() => RunningShell) => {
  let shell: RunningShell | null = null;
  beforeAll(async () => {
    shell = await untilReady(new RunningShell({ folder: temporaryFolder() }));
  });
  afterAll(async () => {
    await shell?.kill();
    rmSync(shell?.folder ?? '', { recursive: true, force: true, maxRetries: 3 });
  });
  return () => {
    if (shell === null) throw new Error('The shell has not started');
    return shell;
  };
};
