import type { FileHandle } from 'node:fs/promises';
import { realFileSystem, type FileSystem } from '#electron/files/file-system.ts';

/** What happens instead of, or before, a call: an error to throw, or nothing. */
export type Interfere = (call: {
  readonly number: number;
  readonly name: string;
}) => void | Promise<void>;

const handleCalls = ['writeFile', 'sync', 'close', 'stat', 'read'] as const;

export const systemError = (code: string): Error =>
  Object.assign(new Error(`${code}: made by the test`), { code });

/**
 * The real file system with every call counted, those on open files too. Before each call the test
 * may let it fail, or end the process.
 */
export const faultyFileSystem = (interfere: Interfere): { fs: FileSystem; calls: () => number } => {
  let number = 0;
  const before = async (name: string): Promise<void> => {
    number += 1;
    await interfere({ number, name });
  };
  const wrapHandle = (handle: FileHandle): FileHandle =>
    new Proxy(handle, {
      get: (target, key) => {
        const value: unknown = Reflect.get(target, key);
        if (typeof value !== 'function') return value;
        const isCounted = (handleCalls as readonly PropertyKey[]).includes(key);
        return async (...given: unknown[]) => {
          if (isCounted) {
            try {
              await before(`handle.${String(key)}`);
            } catch (error) {
              // A failed close still gives the descriptor back.
              if (key === 'close') await target.close();
              throw error;
            }
          }
          return (value as (...all: unknown[]) => unknown).apply(target, given);
        };
      },
    });
  const fs = Object.fromEntries(
    (['open', 'rename', 'rm', 'stat', 'realpath', 'readdir', 'mkdir', 'copyFile'] as const).map(
      (name) => [
        name,
        async (...given: unknown[]) => {
          await before(name);
          const call = realFileSystem[name] as (...all: unknown[]) => Promise<unknown>;
          const value = await call(...given);
          return name === 'open' ? wrapHandle(value as FileHandle) : value;
        },
      ],
    ),
  ) as unknown as FileSystem;
  return { fs, calls: () => number };
};
