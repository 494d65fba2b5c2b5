import type { OpenedPlan, SavedPlan, SaveRequest } from '#core/shell/documents.ts';
import { readPlan } from '#core/plan/read-plan.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import { browserLinks, browserPlatform, exportTypes, fileNameWith } from './browser-facts.ts';
import {
  chooseFile,
  chooseTarget,
  download,
  pickFailure,
  readText,
  writeFile,
  type FileHandle,
} from './browser-files.ts';
import { createBrowserRecovery } from './browser-recovery.ts';
import { createBrowserStore, type StoredRecent } from './browser-store.ts';
import type { Host } from './host.ts';

type OpenFile = { readonly file: FileHandle; modified: number };

/** The file only if it is a plan, with the reader's own words if it is none. */
const checked = (name: string, text: string): HostResult<null> => {
  const read = readPlan(text);
  if (read.ok) return success(null);
  const { code, path, problem, remedy } = read.problem;
  const detail = { name, field: path, problem, remedy };
  if (code === 'too-new' || code === 'too-large') return failure(code, detail);
  const isOther = code === 'empty' || code === 'not-json' || code === 'not-a-plan';
  return failure(isOther ? 'not-a-plan' : 'bad-plan', detail);
};

/** A browser as the page's host: pickers or downloads for files, IndexedDB for recovery copies. */
export const createBrowserHost = (version: string): Host => {
  const recovery = createBrowserRecovery();
  const recent = createBrowserStore<StoredRecent>('recent');
  const open = new Map<string, OpenFile>();
  const problems: string[] = [];
  let current: FileHandle | null = null;
  let unsaved = false;

  addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault();
  });

  const handleFor = (file: FileHandle, modified: number): string => {
    const id = crypto.randomUUID();
    open.clear();
    open.set(id, { file, modified });
    current = file;
    return id;
  };

  const remember = async (file: FileHandle): Promise<void> => {
    const known = await recent.all();
    for (const entry of known) {
      if (await entry.file.isSameEntry(file)) await recent.remove(entry.id);
    }
    await recent.put({ id: crypto.randomUUID(), usedAt: Date.now(), file });
  };

  const openFile = async (
    file: File,
    handle: FileHandle | null,
  ): Promise<HostResult<OpenedPlan>> => {
    const read = await readText(file);
    if (!read.ok) return read;
    const plan = checked(file.name, read.value);
    if (!plan.ok) return plan;
    if (handle !== null) await remember(handle).catch(() => {});
    const id = handle === null ? null : handleFor(handle, file.lastModified);
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
    const known = request.handle === null ? undefined : open.get(request.handle);
    const isSame = known !== undefined && (await known.file.isSameEntry(file));
    if (isSame) known.modified = lastModified;
    const handle = isSame ? request.handle : handleFor(file, lastModified);
    await remember(file).catch(() => {});
    return success({ handle, name: file.name, revision: request.revision });
  };

  const saveAs = async (request: SaveRequest): Promise<HostResult<SavedPlan>> => {
    const name = fileNameWith(request.suggestedName, 'wain');
    const plan = checked(name, request.text);
    if (!plan.ok) return plan;
    const target = await chooseTarget(name, 'wain');
    if (!target.ok) return target;
    if (target.value !== null) return write(target.value, request);
    download(name, new Blob([request.text], { type: 'application/json' }));
    return success({ handle: null, name, revision: request.revision });
  };

  const save = async (request: SaveRequest): Promise<HostResult<SavedPlan>> => {
    if (request.handle === null) return saveAs(request);
    const known = open.get(request.handle);
    if (known === undefined) return failure('unknown-document');
    const plan = checked(known.file.name, request.text);
    if (!plan.ok) return plan;
    try {
      const present = await known.file.getFile();
      if (!request.replaceChanged && present.lastModified !== known.modified) {
        return failure('changed-outside', { name: present.name });
      }
    } catch (error) {
      // A file that was taken away is written anew.
      const gone = pickFailure(error, known.file.name);
      if (gone.code !== 'missing') return gone;
    }
    return write(known.file, request);
  };

  const sortedRecent = async (): Promise<StoredRecent[]> =>
    (await recent.all()).toSorted((one, other) => other.usedAt - one.usedAt).slice(0, 12);

  return {
    kind: 'browser',
    platform: browserPlatform(),
    version,
    menuAnswersShortcuts: false,
    openPlan: async () => {
      const chosen = await chooseFile();
      return chosen.ok ? openFile(chosen.value.file, chosen.value.handle) : chosen;
    },
    openDropped: async (name, text) => {
      const plan = checked(name, text);
      return plan.ok ? success({ handle: null, name, text, access: 'writable' }) : plan;
    },
    openRecent: async (id) => {
      const entry = await recent.get(id);
      return entry === undefined ? failure('missing') : openHandle(entry.file);
    },
    readAgain: async (id) => {
      const known = open.get(id);
      return known === undefined ? failure('unknown-document') : openHandle(known.file);
    },
    savePlan: save,
    savePlanAs: saveAs,
    recentFiles: async () => {
      const entries = await sortedRecent().catch(() => []);
      return entries.map(({ id, file }) => ({ id, name: file.name, available: true }));
    },
    forgetRecentFiles: () => recent.clear(),
    newWindow: async () => {
      globalThis.open(location.href, '_blank', 'noopener');
    },
    recoveryCopies: () => recovery.list().catch(() => []),
    takeRecoveryCopy: async (id) => {
      const taken = await recovery.take(id);
      if (!taken.ok) return taken;
      const { name, text, file } = taken.value;
      const isThere = await file?.getFile().catch(() => null);
      const handle = file !== null && isThere ? handleFor(file, isThere.lastModified) : null;
      return success({ handle, name: file?.name ?? name, text, access: 'writable' });
    },
    discardRecoveryCopy: (id) => recovery.discard(id),
    writeRecoveryCopy: async (name, text) => {
      try {
        return success({ savedAt: await recovery.write(name, text, current) });
      } catch (error) {
        return pickFailure(error, name);
      }
    },
    discardOwnRecoveryCopy: () => recovery.discardOwn(),
    setDocumentState: (state) => {
      unsaved = state.unsaved;
      if (state.handle === null) current = null;
      document.title = `${state.unsaved ? '• ' : ''}${state.name || 'Untitled plan'} – Cellwain`;
    },
    setMenuState: () => {},
    onCommand: () => () => {},
    onOpenRequest: () => () => {},
    onChangedOutside: (listener) => {
      const look = async (): Promise<void> => {
        for (const [id, entry] of open) {
          const present = await entry.file.getFile().catch(() => null);
          if (present !== null && present.lastModified !== entry.modified) listener(id);
        }
      };
      const onFocus = (): void => void look();
      addEventListener('focus', onFocus);
      return () => removeEventListener('focus', onFocus);
    },
    onCloseRequest: () => () => {},
    exportFile: async ({ kind, suggestedName, content }) => {
      const name = fileNameWith(suggestedName, kind);
      const blob = new Blob([content as BlobPart], { type: exportTypes[kind] });
      const target = await chooseTarget(name, kind);
      if (!target.ok) return target;
      if (target.value === null) {
        download(name, blob);
        return success({ name });
      }
      const written = await writeFile(target.value, blob);
      return written.ok ? success({ name: target.value.name }) : written;
    },
    exportPdf: async () => failure('unsupported'),
    print: async () => {
      globalThis.print();
      return success(null);
    },
    report: async () => [`Cellwain ${version}`, navigator.userAgent, ...problems].join('\n'),
    noteProblem: (message) => {
      const flat = message.replaceAll(/\s+/g, ' ').slice(0, 500);
      problems.push(`${new Date().toISOString()} page: ${flat}`);
      if (problems.length > 200) problems.shift();
    },
    about: async () => ({
      name: 'Cellwain',
      version,
      runtimes: { Browser: navigator.userAgent },
      packages: [],
    }),
    openLink: async (key) => {
      globalThis.open(browserLinks[key], '_blank', 'noopener,noreferrer');
    },
    copyText: async (text) => {
      try {
        await navigator.clipboard.writeText(text);
        return success(null);
      } catch {
        return failure('refused');
      }
    },
  };
};
