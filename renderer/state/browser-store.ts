import type { FileHandle } from './browser-files.ts';

export type StoredCopy = {
  readonly id: string;
  readonly name: string;
  readonly savedAt: string;
  readonly text: string;
  readonly sha256: string;
  readonly file: FileHandle | null;
};
export type StoredRecent = {
  readonly id: string;
  readonly usedAt: number;
  readonly file: FileHandle;
};

const asPromise = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error ?? new Error('IndexedDB')));
  });

const openDatabase = (): Promise<IDBDatabase> => {
  const request = indexedDB.open('cellwain', 1);
  request.addEventListener('upgradeneeded', () => {
    request.result.createObjectStore('recovery', { keyPath: 'id' });
    request.result.createObjectStore('recent', { keyPath: 'id' });
  });
  return asPromise(request);
};

/** Recovery copies and recent files in the browser's own database. */
export const createBrowserStore = <T extends { readonly id: string }>(
  name: 'recovery' | 'recent',
) => {
  let database: Promise<IDBDatabase> | null = null;
  const use = async <R>(
    mode: IDBTransactionMode,
    work: (store: IDBObjectStore) => IDBRequest<R>,
  ): Promise<R> => {
    database ??= openDatabase();
    // `strict` waits for the disk: a recovery copy that is only in memory is none.
    const transaction = (await database).transaction(name, mode, { durability: 'strict' });
    const done = new Promise<void>((resolve, reject) => {
      transaction.addEventListener('complete', () => resolve());
      transaction.addEventListener('abort', () =>
        reject(transaction.error ?? new Error('aborted')),
      );
    });
    const [result] = await Promise.all([asPromise(work(transaction.objectStore(name))), done]);
    return result;
  };
  return {
    all: (): Promise<T[]> => use('readonly', (store) => store.getAll() as IDBRequest<T[]>),
    get: (id: string): Promise<T | undefined> =>
      use('readonly', (store) => store.get(id) as IDBRequest<T | undefined>),
    put: async (entry: T): Promise<void> => {
      await use('readwrite', (store) => store.put(entry));
    },
    remove: async (id: string): Promise<void> => {
      await use('readwrite', (store) => store.delete(id));
    },
    clear: async (): Promise<void> => {
      await use('readwrite', (store) => store.clear());
    },
  };
};

/** Checksum of a text as lower-case hexadecimal. */
export const checksum = async (text: string): Promise<string> => {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
};
