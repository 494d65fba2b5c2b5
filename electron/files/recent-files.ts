import { randomUUID } from 'node:crypto';
import { basename, join } from 'node:path';
import { z } from 'zod';
import type { RecentFile } from '#core/shell/documents.ts';
import type { FileQueue } from './file-queue.ts';
import type { FileSystem } from './file-system.ts';
import { readCapped } from './read-capped.ts';
import { writeWhole } from './write-whole.ts';

const keptFiles = 12;
const listSchema = z.array(z.object({ id: z.uuid(), path: z.string().max(4096) })).max(100);
type Entry = z.infer<typeof listSchema>[number];

/** The files opened or saved last. The page sees names and ids; the paths stay here. */
export const createRecentFiles = async (fs: FileSystem, queue: FileQueue, folder: string) => {
  const file = join(folder, 'recent-files.json');
  const load = async (): Promise<Entry[]> => {
    try {
      const text = (await readCapped(fs, file, 1024 * 1024)).toString('utf8');
      return listSchema.parse(JSON.parse(text));
    } catch {
      // A lost or damaged list costs a convenience, nothing else.
      return [];
    }
  };
  let entries = await load();
  const store = (): Promise<void> =>
    queue(file, () => writeWhole(fs, file, Buffer.from(JSON.stringify(entries)), 0o600)).catch(
      () => {},
    );

  const isThere = async (path: string): Promise<boolean> => {
    try {
      return (await fs.stat(path)).isFile();
    } catch {
      return false;
    }
  };

  return {
    add: (path: string): Promise<void> => {
      const known = entries.find((entry) => entry.path === path);
      const rest = entries.filter((entry) => entry.path !== path);
      entries = [known ?? { id: randomUUID(), path }, ...rest].slice(0, keptFiles);
      return store();
    },
    forget: (): Promise<void> => {
      entries = [];
      return store();
    },
    pathOf: (id: string): string | null => entries.find((entry) => entry.id === id)?.path ?? null,
    /** For the menu, which needs no look at the disk. */
    names: (): readonly { id: string; name: string }[] =>
      entries.map(({ id, path }) => ({ id, name: basename(path) })),
    list: (): Promise<readonly RecentFile[]> =>
      Promise.all(
        entries.map(async ({ id, path }) => ({
          id,
          name: basename(path),
          available: await isThere(path),
        })),
      ),
  };
};
export type RecentFiles = Awaited<ReturnType<typeof createRecentFiles>>;
