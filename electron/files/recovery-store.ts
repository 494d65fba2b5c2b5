import { join } from 'node:path';
import { planSizeLimitBytes, type RecoveryCopy } from '#core/shell/documents.ts';
import type { FileQueue } from './file-queue.ts';
import type { FileSystem } from './file-system.ts';
import { readCapped } from './read-capped.ts';
import { decodeRecovery, encodeRecovery, type RecoveryContent } from './recovery-format.ts';
import { temporaryPrefix, writeWhole } from './write-whole.ts';

const ending = '.copy';
const idPattern = /^[0-9a-f-]{36}$/;
/** JSON may double the text by escapes; the rest is the name and the head. */
const copyLimitBytes = 2 * planSizeLimitBytes + 64 * 1024;

/** Recovery copies in one private folder, one file for each window that has unsaved edits. */
export const createRecoveryStore = (fs: FileSystem, queue: FileQueue, folder: string) => {
  const fileOf = (id: string): string => {
    if (!idPattern.test(id)) throw new Error('Not the name of a recovery copy');
    return join(folder, `${id}${ending}`);
  };

  const read = async (id: string): Promise<RecoveryContent | null> => {
    try {
      return decodeRecovery(await readCapped(fs, fileOf(id), copyLimitBytes));
    } catch {
      return null;
    }
  };

  const describe = async (id: string): Promise<RecoveryCopy> => {
    const { size, mtime } = await fs.stat(fileOf(id));
    const content = await read(id);
    return content === null
      ? { id, name: '', savedAt: mtime.toISOString(), bytes: size, state: 'damaged' }
      : { id, name: content.name, savedAt: content.savedAt, bytes: size, state: 'whole' };
  };

  return {
    read,
    write: (id: string, content: RecoveryContent): Promise<void> =>
      queue(fileOf(id), async () => {
        await fs.mkdir(folder, { recursive: true });
        await writeWhole(fs, fileOf(id), encodeRecovery(content), 0o600);
      }),
    discard: (id: string): Promise<void> =>
      queue(fileOf(id), () => fs.rm(fileOf(id), { force: true })),
    /** All copies but those named, newest first. */
    list: async (except: ReadonlySet<string>): Promise<readonly RecoveryCopy[]> => {
      const entries = await fs.readdir(folder).catch(() => []);
      const ids = entries
        .filter((entry) => entry.endsWith(ending))
        .map((entry) => entry.slice(0, -ending.length))
        .filter((id) => idPattern.test(id) && !except.has(id));
      const copies = await Promise.all(ids.map((id) => describe(id).catch(() => null)));
      return copies
        .filter((copy) => copy !== null)
        .toSorted((one, other) => other.savedAt.localeCompare(one.savedAt));
    },
    /** Takes away temporary files that a power cut left. Call once, before the first write. */
    sweep: async (): Promise<void> => {
      const entries = await fs.readdir(folder).catch(() => []);
      const left = entries.filter((entry) => entry.startsWith(temporaryPrefix));
      await Promise.all(
        left.map((entry) => fs.rm(join(folder, entry), { force: true }).catch(() => {})),
      );
    },
  };
};
export type RecoveryStore = ReturnType<typeof createRecoveryStore>;
