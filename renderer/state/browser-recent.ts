import type { RecentFile } from '#core/shell/documents.ts';
import type { FileHandle } from './browser-files.ts';
import { createBrowserStore, type StoredRecent } from './browser-store.ts';

const keptFiles = 12;

/** The files opened or saved last. A lost list costs a convenience, so no failure is made of it. */
export const createBrowserRecent = () => {
  const store = createBrowserStore<StoredRecent>('recent');
  const sorted = async (): Promise<StoredRecent[]> =>
    (await store.all()).toSorted((one, other) => other.usedAt - one.usedAt);

  const put = async (file: FileHandle): Promise<void> => {
    const known = await sorted();
    for (const [index, entry] of known.entries()) {
      const isSame = await entry.file.isSameEntry(file);
      if (isSame || index >= keptFiles - 1) await store.remove(entry.id);
    }
    await store.put({ id: crypto.randomUUID(), usedAt: Date.now(), file });
  };

  return {
    add: (file: FileHandle): Promise<void> => put(file).catch(() => {}),
    list: async (): Promise<readonly RecentFile[]> => {
      const entries = await sorted().catch(() => []);
      return entries.map(({ id, file }) => ({ id, name: file.name, available: true }));
    },
    fileOf: async (id: string): Promise<FileHandle | null> =>
      (await store.get(id).catch(() => undefined))?.file ?? null,
    forget: (): Promise<void> => store.clear().catch(() => {}),
  };
};
export type BrowserRecent = ReturnType<typeof createBrowserRecent>;
