import { basename } from 'node:path';
import type { OpenedPlan } from '#core/shell/documents.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import type { DocumentTable } from './document-table.ts';
import { fileFailure } from './file-failure.ts';
import type { FileSystem } from './file-system.ts';
import { readPlanFile } from './plan-file.ts';
import type { RecentFiles } from './recent-files.ts';

export type OpenNeeds = {
  readonly fs: FileSystem;
  readonly documents: DocumentTable;
  readonly recent: RecentFiles;
  /** The file is open in another window: that one comes forward. */
  readonly showWindow: (windowId: number) => void;
};

/** Opens a file for a window: reads, checks, and gives the window its handle. */
export const openForWindow = async (
  { fs, documents, recent, showWindow }: OpenNeeds,
  path: string,
  windowId: number,
): Promise<HostResult<OpenedPlan>> => {
  const name = basename(path);
  let real: string;
  try {
    real = await fs.realpath(path);
  } catch (error) {
    return fileFailure(error, name, 'reading');
  }
  const holder = documents.windowWith(real);
  if (holder !== null && holder !== windowId) {
    showWindow(holder);
    return failure('in-use', { name });
  }
  const read = await readPlanFile(fs, real);
  if (!read.ok) return read;
  const { text, mark, access, migratedFrom } = read.value;
  const { handle } = documents.put({ path: real, windowId, mark, migratedFrom });
  await recent.add(real);
  return success({ handle, name: basename(real), text, access });
};
