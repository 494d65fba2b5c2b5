import type { FileSystem } from './file-system.ts';
import { retry } from './retry.ts';

export class FileTooLarge extends Error {}
export class NotAFile extends Error {}

/**
 * Reads a whole file unless it is larger than the cap, which is checked before and while reading: a
 * file may grow, and a device or pipe has no size.
 *
 * @param limitBytes largest size accepted [bytes]
 */
export const readCapped = async (
  fs: FileSystem,
  path: string,
  limitBytes: number,
): Promise<Buffer> => {
  const handle = await retry(() => fs.open(path, 'r'));
  try {
    const status = await handle.stat();
    if (!status.isFile()) throw new NotAFile();
    if (status.size > limitBytes) throw new FileTooLarge();
    const buffer = Buffer.alloc(limitBytes < status.size + 1 ? limitBytes + 1 : status.size + 1);
    let filled = 0;
    while (filled < buffer.length) {
      const { bytesRead } = await handle.read(buffer, filled, buffer.length - filled, filled);
      if (bytesRead === 0) return buffer.subarray(0, filled);
      filled += bytesRead;
    }
    throw new FileTooLarge();
  } finally {
    await handle.close();
  }
};
