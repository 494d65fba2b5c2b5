import { basename, dirname, join } from 'node:path';
import { dialog } from 'electron';
import type { SavedPlan, SaveRequest } from '#core/shell/documents.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import { safeFileName } from '../export/export-file.ts';
import { askWhereToSave } from '../export/ask-where.ts';
import { openForWindow } from '../files/open-documents.ts';
import { writePlanFile } from '../files/plan-file.ts';
import { checkPlanText } from '../files/plan-text.ts';
import { wordsFor } from '../text/language-of.ts';
import type { CallHandlers } from './answer-calls.ts';
import type { Shell } from '../shell.ts';

type DocumentCalls = Pick<
  CallHandlers,
  | 'openPlan'
  | 'openDropped'
  | 'openRecent'
  | 'readAgain'
  | 'savePlan'
  | 'savePlanAs'
  | 'recentFiles'
  | 'forgetRecentFiles'
>;

export const documentCalls = (shell: Shell): DocumentCalls => {
  const { fs, queue, documents, recent, windows, documentsFolder } = shell;

  const saveAs = async (request: SaveRequest, windowId: number): Promise<HostResult<SavedPlan>> => {
    const plan = windows.get(windowId);
    if (plan === null) return failure('unknown-document');
    const checked = checkPlanText(request.text, request.suggestedName);
    if (!checked.ok) return checked;
    const present = request.handle === null ? null : documents.get(request.handle, windowId);
    const folder = present === null ? documentsFolder : dirname(present.path);
    const path = await askWhereToSave(plan, fs, {
      defaultPath: join(folder, safeFileName(request.suggestedName, 'wain')),
      ending: 'wain',
      label: wordsFor(plan).planKind,
    });
    if (path === null) return failure('cancelled');
    const holder = documents.windowWith(path);
    if (holder !== null && holder !== windowId) return failure('in-use', { name: basename(path) });
    const { text, revision } = request;
    // The user has just agreed, in the dialog, to replace whatever stands there.
    const written = await writePlanFile(fs, queue, {
      path,
      text,
      expected: null,
      migratedFrom: null,
    });
    if (!written.ok) return written;
    // A new file in a linked folder has its real path only now.
    const real = await fs.realpath(path).catch(() => path);
    const kept = documents.put({ path: real, windowId, mark: written.value, migratedFrom: null });
    await recent.add(real);
    shell.menuChanged();
    return success({ handle: kept.handle, name: basename(path), revision });
  };

  const save = async (request: SaveRequest, windowId: number): Promise<HostResult<SavedPlan>> => {
    if (request.handle === null) return saveAs(request, windowId);
    const document = documents.get(request.handle, windowId);
    if (document === null) return failure('unknown-document');
    const { path, mark, migratedFrom } = document;
    const expected = request.replaceChanged ? null : mark;
    const written = await writePlanFile(fs, queue, {
      path,
      text: request.text,
      expected,
      migratedFrom,
    });
    if (!written.ok) return written;
    documents.put({ path, windowId, mark: written.value, migratedFrom: null });
    return success({ handle: document.handle, name: basename(path), revision: request.revision });
  };

  return {
    openPlan: async (_payload, windowId) => {
      const plan = windows.get(windowId);
      if (plan === null) return failure('unknown-document');
      const { canceled, filePaths } = await dialog.showOpenDialog(plan.window, {
        properties: ['openFile'],
        filters: [
          { name: wordsFor(plan).planKind, extensions: ['wain'] },
          { name: wordsFor(plan).allFiles, extensions: ['*'] },
        ],
      });
      const [path] = filePaths;
      if (canceled || path === undefined) return failure('cancelled');
      const opened = await openForWindow(shell, path, windowId);
      shell.menuChanged();
      return opened;
    },
    openDropped: async ({ name, text }) => {
      const checked = checkPlanText(text, name);
      if (!checked.ok) return checked;
      return success({ handle: null, name, text, access: 'writable' as const });
    },
    openRecent: async ({ id }, windowId) => {
      const path = recent.pathOf(id);
      if (path === null) return failure('missing');
      return openForWindow(shell, path, windowId);
    },
    readAgain: async ({ handle }, windowId) => {
      const document = documents.get(handle, windowId);
      if (document === null) return failure('unknown-document');
      return openForWindow(shell, document.path, windowId);
    },
    // One window's saves run one after the other, so the second sees what the first wrote.
    savePlan: (request, windowId) => queue(`window ${windowId}`, () => save(request, windowId)),
    savePlanAs: (request, windowId) => queue(`window ${windowId}`, () => saveAs(request, windowId)),
    recentFiles: async () => success(await recent.list()),
    forgetRecentFiles: async () => {
      await recent.forget();
      shell.menuChanged();
      return success(null);
    },
  };
};
