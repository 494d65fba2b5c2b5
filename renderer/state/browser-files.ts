import { planSizeLimitBytes } from '#core/shell/documents.ts';
import { failure, success, type HostFailure, type HostResult } from '#core/shell/failure.ts';

/*
 * The File System Access API where the browser has it, else a file chooser and a download. The
 * standard DOM types do not name the pickers, so the parts used here are spelled out.
 */
export type FileHandle = {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{
    write(content: Blob): Promise<void>;
    close(): Promise<void>;
    abort(): Promise<void>;
  }>;
  isSameEntry(other: FileHandle): Promise<boolean>;
  queryPermission?(options: { mode: 'read' | 'readwrite' }): Promise<PermissionState>;
  requestPermission?(options: { mode: 'read' | 'readwrite' }): Promise<PermissionState>;
};
type FileType = { description: string; accept: Record<string, string[]> };
type Pickers = {
  showOpenFilePicker?(options: { id: string; types: FileType[] }): Promise<FileHandle[]>;
  showSaveFilePicker?(options: {
    id: string;
    suggestedName: string;
    types: FileType[];
  }): Promise<FileHandle>;
};

const pickers = (): Pickers => globalThis as unknown as Pickers;
export const hasFilePickers = (): boolean => pickers().showSaveFilePicker !== undefined;

const planType: FileType = {
  description: 'Cellwain plan',
  accept: { 'application/json': ['.wain'] },
};

export const pickFailure = (error: unknown, name = ''): HostFailure => {
  const kind = error instanceof DOMException ? error.name : '';
  if (kind === 'AbortError') return failure('cancelled');
  if (kind === 'NotFoundError') return failure('missing', { name });
  if (kind === 'NotAllowedError' || kind === 'NoModificationAllowedError') {
    return failure('read-only', { name });
  }
  if (kind === 'QuotaExceededError') return failure('disk-full', { name });
  return failure('failed', { name });
};

/** Asks for a plan file; without the pickers the handle is null and saving is a download. */
export const chooseFile = async (): Promise<
  HostResult<{ file: File; handle: FileHandle | null }>
> => {
  const host = pickers();
  if (host.showOpenFilePicker === undefined) return chooseByInput();
  try {
    const [handle] = await host.showOpenFilePicker({ id: 'plans', types: [planType] });
    if (handle === undefined) return failure('cancelled');
    return success({ file: await handle.getFile(), handle });
  } catch (error) {
    return pickFailure(error);
  }
};

const chooseByInput = (): Promise<HostResult<{ file: File; handle: null }>> =>
  new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = '.wain,application/json';
    input.addEventListener('change', () => {
      const file = input.files?.[0];
      resolve(file === undefined ? failure('cancelled') : success({ file, handle: null }));
    });
    input.addEventListener('cancel', () => resolve(failure('cancelled')));
    input.click();
  });

export const readText = async (file: File): Promise<HostResult<string>> => {
  if (file.size > planSizeLimitBytes) return failure('too-large', { name: file.name });
  try {
    const bytes = await file.arrayBuffer();
    return success(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (error) {
    // A decoder refuses with a TypeError: the bytes are no text.
    return failure(error instanceof TypeError ? 'not-a-plan' : 'unreadable', { name: file.name });
  }
};

/** Asks where to save; the browser's dialog asks before replacing. Null without the pickers. */
export const chooseTarget = async (
  suggestedName: string,
  ending: string,
): Promise<HostResult<FileHandle | null>> => {
  const host = pickers();
  if (host.showSaveFilePicker === undefined) return success(null);
  const accept = { 'application/octet-stream': [`.${ending}`] };
  const types = ending === 'wain' ? [planType] : [{ description: ending.toUpperCase(), accept }];
  try {
    const options = { id: 'plans', suggestedName, types };
    return success(await host.showSaveFilePicker(options));
  } catch (error) {
    return pickFailure(error);
  }
};

/** Writes a whole file: the browser keeps the old one until the new one is complete. */
export const writeFile = async (handle: FileHandle, content: Blob): Promise<HostResult<null>> => {
  try {
    const stream = await handle.createWritable();
    try {
      await stream.write(content);
      await stream.close();
    } catch (error) {
      await stream.abort().catch(() => {});
      throw error;
    }
    return success(null);
  } catch (error) {
    return pickFailure(error, handle.name);
  }
};

/** Hands the content to the browser's downloads, which never replace a file. */
export const download = (name: string, content: Blob): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // The download has its own hold on the data once it has begun.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
};
