import { constants } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import { planSizeLimitBytes } from '#core/shell/documents.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import { fileFailure } from './file-failure.ts';
import { markOf, sameMark, type FileMark } from './file-mark.ts';
import type { FileQueue } from './file-queue.ts';
import { errorCode, type FileSystem } from './file-system.ts';
import { checkPlanText, decodeText } from './plan-text.ts';
import { readCapped } from './read-capped.ts';
import { writeWhole } from './write-whole.ts';

export type PlanOnDisk = {
  readonly text: string;
  readonly mark: FileMark;
  readonly access: 'writable' | 'read-only';
  /** Format version of an older file; its original is kept beside at the first save. */
  readonly migratedFrom: number | null;
};

/** A file nobody may write to. The permission bits also count for root, whom the system lets by. */
const isReadOnly = async (fs: FileSystem, path: string): Promise<boolean> =>
  ((await fs.stat(path)).mode & 0o222) === 0;

/** Reads a plan file. Nothing is changed on disk, whatever the file holds. */
export const readPlanFile = async (
  fs: FileSystem,
  path: string,
): Promise<HostResult<PlanOnDisk>> => {
  const name = basename(path);
  try {
    const bytes = await readCapped(fs, path, planSizeLimitBytes);
    const text = decodeText(bytes);
    if (text === null) return failure('not-a-plan', { name });
    const checked = checkPlanText(text, name);
    if (!checked.ok) return checked;
    const access = (await isReadOnly(fs, path)) ? 'read-only' : 'writable';
    return success({ text, mark: markOf(bytes), access, ...checked.value });
  } catch (error) {
    return fileFailure(error, name, 'reading');
  }
};

/** Mark of the file as it is now, or null when there is none. */
export const currentMark = async (fs: FileSystem, path: string): Promise<FileMark | null> => {
  try {
    return markOf(await readCapped(fs, path, planSizeLimitBytes));
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return null;
    throw error;
  }
};

const exists = async (fs: FileSystem, path: string): Promise<boolean> => {
  try {
    await fs.stat(path);
    return true;
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return false;
    throw error;
  }
};

/** Keeps the original of an older file as `name (format 1).wain`; one that is there stays. */
const keepOriginal = async (fs: FileSystem, path: string, version: number): Promise<void> => {
  const ending = extname(path);
  const copy = join(dirname(path), `${basename(path, ending)} (format ${version})${ending}`);
  try {
    await fs.copyFile(path, copy, constants.COPYFILE_EXCL);
  } catch (error) {
    if (errorCode(error) !== 'EEXIST') throw error;
  }
};

export type PlanWrite = {
  readonly path: string;
  readonly text: string;
  /** What the file was when last seen; null for a file the user has just agreed to replace. */
  readonly expected: FileMark | null;
  readonly migratedFrom: number | null;
};

/** The path behind any links, so that a save replaces the file and not the link to it. */
const behindLinks = async (fs: FileSystem, path: string): Promise<string> => {
  try {
    return await fs.realpath(path);
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return path;
    throw error;
  }
};

/**
 * Saves a plan: validates the text, makes sure the file is as it was last seen, writes it whole.
 * On any failure the file on disk is what it was.
 */
export const writePlanFile = async (
  fs: FileSystem,
  queue: FileQueue,
  { path, text, expected, migratedFrom }: PlanWrite,
): Promise<HostResult<FileMark>> => {
  const name = basename(path);
  const bytes = Buffer.from(text, 'utf8');
  if (bytes.byteLength > planSizeLimitBytes) return failure('too-large', { name });
  const checked = checkPlanText(text, name);
  if (!checked.ok) return checked;
  return queue(path, async () => {
    try {
      const target = await behindLinks(fs, path);
      const isThere = await exists(fs, target);
      if (isThere && (await isReadOnly(fs, target))) return failure('read-only', { name });
      // A file that is to be replaced in any case may be of any size and is not read.
      const present = expected === null ? null : await currentMark(fs, target);
      if (expected !== null && present !== null && !sameMark(expected, present)) {
        return failure('changed-outside', { name });
      }
      if (migratedFrom !== null && isThere) await keepOriginal(fs, target, migratedFrom);
      await writeWhole(fs, target, bytes);
      return success(markOf(bytes));
    } catch (error) {
      return fileFailure(error, name, 'writing');
    }
  });
};
