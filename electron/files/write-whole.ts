import { randomBytes } from 'node:crypto';
import { basename, dirname, join } from 'node:path';
import type { FileSystem } from './file-system.ts';
import { retry } from './retry.ts';

/** Beginning of the name of every temporary file, so that one left by a power cut is known as ours. */
export const temporaryPrefix = '.cellwain-';

const temporaryBeside = (path: string): string =>
  join(dirname(path), `${temporaryPrefix}${randomBytes(6).toString('hex')}-${basename(path)}.tmp`);

const writeAndFlush = async (
  fs: FileSystem,
  path: string,
  bytes: Uint8Array,
  mode: number,
): Promise<void> => {
  // Exclusive: never writes into a file, or through a link, that someone else put there.
  const handle = await retry(() => fs.open(path, 'wx', mode));
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
};

/**
 * Makes the rename itself last through a power cut. Windows cannot open a folder, and some network
 * file systems cannot flush one; the file is whole either way, so no failure is made of it.
 */
const flushFolder = async (fs: FileSystem, folder: string): Promise<void> => {
  try {
    const handle = await fs.open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    // See above: nothing to undo, nothing the user could do.
  }
};

const modeOf = async (fs: FileSystem, path: string, otherwise: number): Promise<number> => {
  try {
    return (await fs.stat(path)).mode & 0o777;
  } catch {
    return otherwise;
  }
};

/**
 * Writes a file so that at every moment, also after a crash at any step, the path holds either the
 * whole old content or the whole new one. When it rejects, the old file stands and the temporary
 * file is gone.
 *
 * @param path file to write; a link must be resolved before
 * @param newFileMode permissions when the file does not exist yet
 */
export const writeWhole = async (
  fs: FileSystem,
  path: string,
  bytes: Uint8Array,
  newFileMode = 0o644,
): Promise<void> => {
  const temporary = temporaryBeside(path);
  const mode = await modeOf(fs, path, newFileMode);
  try {
    await writeAndFlush(fs, temporary, bytes, mode);
    await retry(() => fs.rename(temporary, path));
  } catch (error) {
    await retry(() => fs.rm(temporary, { force: true })).catch(() => {});
    throw error;
  }
  await flushFolder(fs, dirname(path));
};
