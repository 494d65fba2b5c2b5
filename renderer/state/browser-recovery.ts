import type { RecoveryCopy } from '#core/shell/documents.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import { checksum, createBrowserStore, type StoredCopy } from './browser-store.ts';
import type { FileHandle } from './browser-files.ts';

const lockOf = (id: string): string => `cellwain-window-${id}`;

const livingTabs = async (): Promise<ReadonlySet<string>> => {
  const { held = [] } = await navigator.locks.query();
  return new Set(held.map((lock) => lock.name ?? ''));
};

const isWhole = async (copy: StoredCopy): Promise<boolean> =>
  (await checksum(copy.text)) === copy.sha256;

/** Recovery copies of this browser. A tab holds a lock while it lives, so its copy is not offered. */
export const createBrowserRecovery = () => {
  const store = createBrowserStore<StoredCopy>('recovery');
  const ownId = crypto.randomUUID();
  // Held until the tab is gone; the browser lets go of it even after a crash.
  void navigator.locks.request(lockOf(ownId), () => new Promise(() => {}));

  /** One after the other: a copy that is still being written must not outlive its discarding. */
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(job: () => Promise<T>): Promise<T> => {
    const result = last.then(job, job);
    last = result.catch(() => {});
    return result;
  };

  const write = (name: string, text: string, file: FileHandle | null): Promise<string> =>
    inTurn(async () => {
      const savedAt = new Date().toISOString();
      await store.put({ id: ownId, name, savedAt, text, sha256: await checksum(text), file });
      return savedAt;
    });

  return {
    list: async (): Promise<RecoveryCopy[]> => {
      const living = await livingTabs();
      const left = (await store.all()).filter(({ id }) => !living.has(lockOf(id)));
      const copies = await Promise.all(
        left.map(async (copy) => ({
          id: copy.id,
          name: copy.name,
          savedAt: copy.savedAt,
          bytes: new Blob([copy.text]).size,
          state: (await isWhole(copy)) ? ('whole' as const) : ('damaged' as const),
        })),
      );
      return copies.toSorted((one, other) => other.savedAt.localeCompare(one.savedAt));
    },
    take: async (id: string): Promise<HostResult<StoredCopy>> => {
      const copy = await store.get(id);
      if (copy === undefined) return failure('missing');
      if (!(await isWhole(copy))) return failure('damaged', { name: copy.name });
      // Own copy first: at no moment is there none.
      await write(copy.name, copy.text, copy.file);
      await store.remove(id);
      return success(copy);
    },
    discard: (id: string): Promise<void> => store.remove(id),
    discardOwn: (): Promise<void> => inTurn(() => store.remove(ownId)),
    write,
  };
};
