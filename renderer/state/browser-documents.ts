import { planSizeLimitBytes, type OpenedPlan } from '#core/shell/documents.ts';
import type { SavedPlan, SaveRequest } from '#core/shell/documents.ts';
import { readPlan } from '#core/plan/read-plan.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import { fileNameWith } from './browser-facts.ts';
import {
  chooseFile,
  chooseTarget,
  download,
  pickFailure,
  readText,
  writeFile,
  type FileHandle,
} from './browser-files.ts';
import type { BrowserRecent } from './browser-recent.ts';
import { checksum } from './browser-store.ts';

/** The one file this tab has open, and what it held when this tab last read or wrote it. */
type OpenFile = {
  readonly id: string;
  readonly file: FileHandle;
  modified: number;
  sha256: string;
  /** Foreign content the page was already told of. */
  reported: string | null;
};

/** The text only if it is a plan, with the reader's own words if it is none. */
export const checkedPlan = (name: string, text: string): HostResult<null> => {
  const read = readPlan(text);
  if (read.ok) return success(null);
  const { code, path, problem, remedy } = read.problem;
  const detail = { name, field: path, problem, remedy };
  if (code === 'too-new' || code === 'too-large') return failure(code, detail);
  const isOther = code === 'empty' || code === 'not-json' || code === 'not-a-plan';
  return failure(isOther ? 'not-a-plan' : 'bad-plan', detail);
};

/**
 * Checksum of what another program has put into the file, or null when it holds what this tab knows.
 * A file that was only touched has not changed.
 */
const foreignContent = async (open: OpenFile): Promise<string | null> => {
  const present = await open.file.getFile();
  if (present.lastModified === open.modified) return null;
  if (present.size > planSizeLimitBytes) return `${present.size} bytes`;
  const sha256 = await checksum(await present.text());
  if (sha256 !== open.sha256) return sha256;
  open.modified = present.lastModified;
  return null;
};

/** Opening and saving in a browser: by file handles where it has them, else by upload and download. */
export const createBrowserDocuments = (recent: BrowserRecent) => {
  let open: OpenFile | null = null;

  const adopt = async (file: FileHandle, modified: number, text: string): Promise<string> => {
    const isSame = open !== null && (await open.file.isSameEntry(file));
    const id = isSame && open !== null ? open.id : crypto.randomUUID();
    open = { id, file, modified, sha256: await checksum(text), reported: null };
    return id;
  };

  const openFile = async (
    file: File,
    handle: FileHandle | null,
  ): Promise<HostResult<OpenedPlan>> => {
    const read = await readText(file);
    if (!read.ok) return read;
    const plan = checkedPlan(file.name, read.value);
    if (!plan.ok) return plan;
    if (handle !== null) await recent.add(handle);
    const id = handle === null ? null : await adopt(handle, file.lastModified, read.value);
    return success({ handle: id, name: file.name, text: read.value, access: 'writable' });
  };

  const openHandle = async (handle: FileHandle): Promise<HostResult<OpenedPlan>> => {
    try {
      const granted = await handle.requestPermission?.({ mode: 'read' });
      if (granted === 'denied') return failure('unreadable', { name: handle.name });
      return await openFile(await handle.getFile(), handle);
    } catch (error) {
      return pickFailure(error, handle.name);
    }
  };

  const write = async (file: FileHandle, request: SaveRequest): Promise<HostResult<SavedPlan>> => {
    const written = await writeFile(file, new Blob([request.text]));
    if (!written.ok) return written;
    const { lastModified } = await file.getFile();
    const handle = await adopt(file, lastModified, request.text);
    await recent.add(file);
    return success({ handle, name: file.name, revision: request.revision });
  };

  const saveAs = async (request: SaveRequest): Promise<HostResult<SavedPlan>> => {
    const name = fileNameWith(request.suggestedName, 'wain');
    const plan = checkedPlan(name, request.text);
    if (!plan.ok) return plan;
    const target = await chooseTarget(name, 'wain');
    if (!target.ok) return target;
    if (target.value !== null) return write(target.value, request);
    download(name, new Blob([request.text], { type: 'application/json' }));
    return success({ handle: null, name, revision: request.revision });
  };

  const save = async (request: SaveRequest): Promise<HostResult<SavedPlan>> => {
    if (request.handle === null) return saveAs(request);
    if (open?.id !== request.handle) return failure('unknown-document');
    const { file } = open;
    const plan = checkedPlan(file.name, request.text);
    if (!plan.ok) return plan;
    try {
      const foreign = request.replaceChanged ? null : await foreignContent(open);
      if (foreign !== null) return failure('changed-outside', { name: file.name });
    } catch (error) {
      // A file that was taken away is written anew.
      const gone = pickFailure(error, file.name);
      if (gone.code !== 'missing') return gone;
    }
    return write(file, request);
  };

  return {
    choose: async (): Promise<HostResult<OpenedPlan>> => {
      const chosen = await chooseFile();
      return chosen.ok ? openFile(chosen.value.file, chosen.value.handle) : chosen;
    },
    openHandle,
    readAgain: async (id: string): Promise<HostResult<OpenedPlan>> =>
      open?.id === id ? openHandle(open.file) : failure('unknown-document'),
    save,
    saveAs,
    /** File of the open plan, kept with a recovery copy. */
    file: (): FileHandle | null => open?.file ?? null,
    /** The plan on screen is in no file any more. */
    letGo: (): void => {
      open = null;
    },
    /** Takes up the file of a recovery copy, if it is still there. */
    takeUp: async (file: FileHandle): Promise<string | null> => {
      const present = await file.getFile().catch(() => null);
      return present === null ? null : adopt(file, present.lastModified, await present.text());
    },
    /** Handle of the open file if another program has changed it since; each change is told once. */
    changedOutside: async (): Promise<string | null> => {
      if (open === null) return null;
      const { id } = open;
      const foreign = await foreignContent(open).catch(() => null);
      if (foreign === null || open?.id !== id || open.reported === foreign) return null;
      open.reported = foreign;
      return id;
    },
  };
};
