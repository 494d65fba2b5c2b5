import { bridgeName, type ShellBridge } from '#core/shell/bridge.ts';
import type { AboutData } from '#core/shell/documents.ts';
import type { HostResult } from '#core/shell/failure.ts';
import type { Host } from './host.ts';

/** The bridge of the desktop shell, or null in a plain browser. */
export const shellBridge = (): ShellBridge | null =>
  (globalThis as { [bridgeName]?: ShellBridge })[bridgeName] ?? null;

const unknownAbout = (version: string): AboutData => ({
  name: 'Cellwain',
  version,
  runtimes: {},
  packages: [],
});

const valueOr = <T>(result: HostResult<T>, otherwise: T): T =>
  result.ok ? result.value : otherwise;

/** The desktop shell as the page's host: a thin layer over the bridge. */
export const createElectronHost = ({ platform, version, call, listen }: ShellBridge): Host => {
  let closeListener: (() => Promise<'close' | 'stay'>) | null = null;
  let announced = false;

  /** Messages wait in the shell until the page listens for the first time. */
  const announce = (): void => {
    if (announced) return;
    announced = true;
    queueMicrotask(() => void call.pageReady({}));
  };
  const listening = (stop: () => void): (() => void) => {
    announce();
    return stop;
  };

  listen.closeRequest(({ id }) => {
    if (closeListener === null) return;
    void call.closeSeen({ id });
    void closeListener().then((answer) => call.closeAnswer({ id, answer }));
  });

  return {
    kind: 'desktop',
    platform,
    version,
    menuAnswersShortcuts: true,
    openPlan: () => call.openPlan({}),
    openDropped: (name, text) => call.openDropped({ name, text }),
    openRecent: (id) => call.openRecent({ id }),
    readAgain: (handle) => call.readAgain({ handle }),
    savePlan: (request) => call.savePlan(request),
    savePlanAs: (request) => call.savePlanAs(request),
    recentFiles: async () => valueOr(await call.recentFiles({}), []),
    forgetRecentFiles: async () => {
      await call.forgetRecentFiles({});
    },
    newWindow: async () => {
      await call.newWindow({});
    },
    recoveryCopies: async () => valueOr(await call.recoveryCopies({}), []),
    takeRecoveryCopy: (id) => call.takeRecoveryCopy({ id }),
    discardRecoveryCopy: async (id) => {
      await call.discardRecoveryCopy({ id });
    },
    writeRecoveryCopy: (name, text) => call.writeRecoveryCopy({ name, text }),
    discardOwnRecoveryCopy: async () => {
      await call.discardOwnRecoveryCopy({});
    },
    setDocumentState: (state) => void call.setDocumentState(state),
    setMenuState: (state) => void call.setMenuState(state),
    onCommand: (listener) => listening(listen.command(({ id }) => listener(id))),
    onOpenRequest: (listener) => listening(listen.openRequest(listener)),
    onChangedOutside: (listener) =>
      listening(listen.changedOutside(({ handle }) => listener(handle))),
    onCloseRequest: (listener) => {
      closeListener = listener;
      announce();
      return () => {
        if (closeListener === listener) closeListener = null;
      };
    },
    exportFile: (request) => call.exportFile(request),
    exportPdf: (request) => call.exportPdf(request),
    print: () => call.print({}),
    report: async () => valueOr(await call.report({}), ''),
    noteProblem: (message) => void call.noteProblem({ message: message.slice(0, 10_000) }),
    about: async () => valueOr(await call.about({}), unknownAbout(version)),
    openLink: async (key) => {
      await call.openLink({ key });
    },
    copyText: (text) => call.copyText({ text }),
  };
};
