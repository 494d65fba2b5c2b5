import { join } from 'node:path';
import { z } from 'zod';
import type { FileQueue } from '../files/file-queue.ts';
import type { FileSystem } from '../files/file-system.ts';
import { readCapped } from '../files/read-capped.ts';
import { writeWhole } from '../files/write-whole.ts';
import type { Bounds } from './bounds.ts';

const px = z.number().int().min(-100_000).max(100_000);
const placeSchema = z.object({ x: px, y: px, width: px.positive(), height: px.positive() });

/** Where the last window stood, kept over restarts. */
export const createWindowPlace = async (fs: FileSystem, queue: FileQueue, folder: string) => {
  const file = join(folder, 'window-place.json');
  let place: Bounds | null;
  try {
    place = placeSchema.parse(JSON.parse((await readCapped(fs, file, 4096)).toString('utf8')));
  } catch {
    place = null;
  }
  return {
    get: (): Bounds | null => place,
    set: (bounds: Bounds): Promise<void> => {
      place = bounds;
      const bytes = Buffer.from(JSON.stringify(bounds));
      return queue(file, () => writeWhole(fs, file, bytes, 0o600)).catch(() => {});
    },
  };
};
export type WindowPlace = Awaited<ReturnType<typeof createWindowPlace>>;
