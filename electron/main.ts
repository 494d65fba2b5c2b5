import { app, BrowserWindow } from 'electron';
import { answerCalls } from './ipc/answer-calls.ts';
import { documentCalls } from './ipc/document-calls.ts';
import { exportCalls } from './ipc/export-calls.ts';
import { recoveryCalls } from './ipc/recovery-calls.ts';
import { windowCalls } from './ipc/window-calls.ts';
import { fenceAllPages } from './security/navigation.ts';
import { registerPageScheme } from './security/page-protocol.ts';
import { startShell } from './start-shell.ts';
import type { Shell } from './shell.ts';
import { startUpdates } from './updates/start-updates.ts';
import { openFromOutside, plansOnCommandLine } from './windows/open-from-outside.ts';

/* Order of the start. Each step is a module of its own; the order is what this file is for. */

const registerCalls = (shell: Shell): void => {
  const handlers = {
    ...documentCalls(shell),
    ...recoveryCalls(shell),
    ...windowCalls(shell),
    ...exportCalls(shell),
  };
  const windowIdOf = (event: Electron.IpcMainInvokeEvent): number | null => {
    const window = BrowserWindow.fromWebContents(event.sender);
    return window !== null && shell.windows.get(window.id) !== null ? window.id : null;
  };
  answerCalls(handlers, windowIdOf, shell.log);
};

const listenToSystem = (shell: Shell): void => {
  const { windows } = shell;
  app.on('activate', () => {
    if (windows.all().length === 0) windows.open();
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  app.on('before-quit', () => {
    windows.quitting.now = true;
  });
};

/** Files asked for before the shell stands wait here; the system sends them very early. */
const waiting: string[] = [];
let running: Shell | null = null;
const openPath = (path: string): void => {
  if (running === null) waiting.push(path);
  else void openFromOutside(running, path);
};

const start = async (): Promise<void> => {
  await app.whenReady();
  const shell = await startShell();
  registerCalls(shell);
  listenToSystem(shell);
  shell.menuChanged();
  shell.windows.open();
  running = shell;
  const asked = [...plansOnCommandLine(process.argv.slice(1), process.cwd()), ...waiting.splice(0)];
  for (const path of asked) await openFromOutside(shell, path);
  // Does nothing in a build without a feed, which is every ordinary one.
  await startUpdates(shell.log);
};

registerPageScheme();
app.enableSandbox();
fenceAllPages(app);
app.on('open-file', (event, path) => {
  event.preventDefault();
  openPath(path);
});
app.on('second-instance', (_event, argv, folder) => {
  const paths = plansOnCommandLine(argv.slice(1), folder);
  for (const path of paths) openPath(path);
  const [front] = running?.windows.all() ?? [];
  if (paths.length === 0 && front !== undefined) running?.windows.bringForward(front);
});

if (app.requestSingleInstanceLock()) {
  start().catch((error: unknown) => {
    process.stderr.write(`Cellwain could not start: ${String(error)}\n`);
    app.exit(1);
  });
} else {
  app.quit();
}
