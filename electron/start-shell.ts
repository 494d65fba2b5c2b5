import { release } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { app, session } from 'electron';
import { aboutData } from './diagnostics/about.ts';
import { createProblemLog } from './diagnostics/problem-log.ts';
import { createDocumentTable } from './files/document-table.ts';
import { createFileQueue } from './files/file-queue.ts';
import { realFileSystem as fs } from './files/file-system.ts';
import { createRecentFiles } from './files/recent-files.ts';
import { createRecoveryStore } from './files/recovery-store.ts';
import { showMenu } from './menu/application-menu.ts';
import { servePageFiles } from './security/page-protocol.ts';
import { denyAllPermissions } from './security/permissions.ts';
import { pagePartition } from './security/web-preferences.ts';
import type { Shell } from './shell.ts';
import { createPlanWindows } from './windows/plan-windows.ts';
import { tellOfOutsideChange } from './windows/watch-outside.ts';
import { createWindowPlace } from './windows/window-place.ts';

/** Folder of all bundles: this file is `dist/main/main.js` once built. */
const dist = fileURLToPath(new URL('..', import.meta.url));

const now = (): Date => new Date();

/** Puts the parts of the shell together. Nothing is on screen yet. */
export const startShell = async (): Promise<Shell> => {
  const pages = session.fromPartition(pagePartition);
  denyAllPermissions(pages);
  servePageFiles(pages, join(dist, 'renderer'));

  const userData = app.getPath('userData');
  const queue = createFileQueue();
  const documents = createDocumentTable();
  const log = createProblemLog(now);
  const recovery = createRecoveryStore(fs, queue, join(userData, 'recovery'));
  const [recent, place] = await Promise.all([
    createRecentFiles(fs, queue, userData),
    createWindowPlace(fs, queue, userData),
    recovery.sweep(),
  ]);
  const version = app.getVersion();
  const windows = createPlanWindows({
    session: pages,
    preload: join(dist, 'preload', 'preload.cjs'),
    icon: join(dist, 'main', 'icon.png'),
    version,
    isPackaged: app.isPackaged,
    documents,
    place,
    log,
    onFocus: (plan) => void tellOfOutsideChange({ documents, fs }, plan),
    onChange: () => shell.menuChanged(),
    onClosed: (plan) => {
      if (plan.mayClose) void recovery.discard(plan.recoveryId).catch(() => {});
    },
  });
  const shell: Shell = {
    fs,
    queue,
    documents,
    recent,
    recovery,
    windows,
    log,
    now,
    about: () => aboutData(version, dist),
    menuChanged: () => showMenu(shell),
    showWindow: (windowId) => {
      const plan = windows.get(windowId);
      if (plan !== null) windows.bringForward(plan);
    },
    documentsFolder: app.getPath('documents'),
    home: app.getPath('home'),
    system: `${process.platform} ${release()} ${process.arch}`,
  };
  return shell;
};
