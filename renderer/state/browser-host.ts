import type { DocumentHandle } from '#core/shell/documents.ts';
import { failure, success } from '#core/shell/failure.ts';
import { createBrowserDiagnostics } from './browser-diagnostics.ts';
import { checkedPlan, createBrowserDocuments } from './browser-documents.ts';
import { browserLinks, browserPlatform, exportTypes, fileNameWith } from './browser-facts.ts';
import { chooseTarget, download, pickFailure, writeFile } from './browser-files.ts';
import { createBrowserRecent } from './browser-recent.ts';
import { createBrowserRecovery } from './browser-recovery.ts';
import type { Host } from './host.ts';

const exportFile: Host['exportFile'] = async ({ kind, suggestedName, content }) => {
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
};

/** A browser as the page's host: pickers or downloads for files, IndexedDB for recovery copies. */
export const createBrowserHost = (version: string): Host => {
  const recent = createBrowserRecent();
  const documents = createBrowserDocuments(recent);
  const recovery = createBrowserRecovery();
  const diagnostics = createBrowserDiagnostics(version);
  let unsaved = false;
  let handle: DocumentHandle | null = null;

  addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault();
  });

  return {
    kind: 'browser',
    platform: browserPlatform(),
    version,
    menuAnswersShortcuts: false,
    openPlan: documents.choose,
    openDropped: async (name, text) => {
      const plan = checkedPlan(name, text);
      return plan.ok ? success({ handle: null, name, text, access: 'writable' }) : plan;
    },
    openRecent: async (id) => {
      const file = await recent.fileOf(id);
      return file === null ? failure('missing') : documents.openHandle(file);
    },
    readAgain: documents.readAgain,
    savePlan: documents.save,
    savePlanAs: documents.saveAs,
    recentFiles: recent.list,
    forgetRecentFiles: recent.forget,
    newWindow: async () => {
      globalThis.open(location.href, '_blank', 'noopener');
    },
    recoveryCopies: () => recovery.list().catch(() => []),
    takeRecoveryCopy: async (id) => {
      const taken = await recovery.take(id);
      if (!taken.ok) return taken;
      const { name, text, file } = taken.value;
      const own = file === null ? null : await documents.takeUp(file);
      return success({ handle: own, name: file?.name ?? name, text, access: 'writable' });
    },
    discardRecoveryCopy: (id) => recovery.discard(id),
    writeRecoveryCopy: async (name, text) => {
      try {
        return success({ savedAt: await recovery.write(name, text, documents.file()) });
      } catch (error) {
        return pickFailure(error, name);
      }
    },
    discardOwnRecoveryCopy: () => recovery.discardOwn(),
    setDocumentState: (state) => {
      unsaved = state.unsaved;
      // Not before there was one: a first save may be on its way.
      if (state.handle === null && handle !== null) documents.letGo();
      handle = state.handle;
    },
    // The page's own menu shows all of this, and nothing reaches the page from outside.
    setMenuState: () => {},
    onCommand: () => () => {},
    onOpenRequest: () => () => {},
    onCloseRequest: () => () => {},
    onChangedOutside: (listener) => {
      const onFocus = (): void => {
        void documents.changedOutside().then((changed) => {
          if (changed !== null) listener(changed);
        });
      };
      addEventListener('focus', onFocus);
      return () => removeEventListener('focus', onFocus);
    },
    exportFile,
    exportPdf: async () => failure('unsupported'),
    print: async () => {
      globalThis.print();
      return success(null);
    },
    report: async () => diagnostics.report(),
    noteProblem: diagnostics.note,
    about: diagnostics.about,
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
