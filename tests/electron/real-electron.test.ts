import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { _electron, type ElectronApplication, type Page } from 'playwright-core';
import { describe, expect, inject, onTestFinished, test, type TestContext } from 'vitest';
import type { ShellBridge } from '#core/shell/bridge.ts';
import { planText } from '../support/plan-text.ts';
import { freshFolder } from '../support/shell-driver.ts';

/*
 * What the stand-in cannot show, on Electron itself: the isolated world, the sandbox, the real scheme
 * with its policy, the native menu, the real PDF. Skipped with the reason where Electron cannot run.
 */
type Running = { readonly app: ElectronApplication; readonly page: Page; readonly folder: string };

const start = async (context: TestContext): Promise<Running> => {
  const executablePath = inject('electronFile');
  if (executablePath === '')
    context.skip(`Electron cannot run here: ${inject('noElectronReason')}`);
  const folder = freshFolder();
  const app = await _electron.launch({
    executablePath,
    args: [inject('realShellFolder'), `--user-data-dir=${join(folder, 'user-data')}`],
  });
  onTestFinished(async () => {
    app.process().kill('SIGKILL');
    await app.close().catch(() => {});
  });
  const page = await app.firstWindow();
  await page.getByRole('heading', { name: 'Orchard cart' }).waitFor();
  return { app, page, folder };
};

const clickMenu = (app: ElectronApplication, id: string): Promise<void> =>
  app.evaluate(({ Menu }, item) => {
    Menu.getApplicationMenu()?.getMenuItemById(item)?.click();
  }, id);

const answerDialogs = (app: ElectronApplication, path: string): Promise<void> =>
  app.evaluate(({ dialog }, file) => {
    Object.assign(dialog, {
      showOpenDialog: async () => ({ canceled: false, filePaths: [file] }),
      showSaveDialog: async () => ({ canceled: false, filePath: file }),
    });
  }, path);

describe('on Electron itself', () => {
  test('the page comes by its own scheme and sees the bridge alone', async (context) => {
    const { page } = await start(context);
    expect(page.url()).toBe('cellwain://shell/index.html');
    const found = await page.evaluate(() =>
      ['require', 'process', 'module', 'Buffer', 'ipcRenderer'].filter(
        (name) => name in globalThis,
      ),
    );
    expect(found).toEqual([]);
    expect(await page.evaluate(() => 'cellwainShell' in globalThis)).toBe(true);
  });

  test('nothing is loaded from elsewhere and no window is opened', async (context) => {
    const { app, page } = await start(context);
    const outcome = await page.evaluate(() =>
      fetch('https://example.com/').then(
        () => 'sent',
        () => 'refused',
      ),
    );
    expect(outcome).toBe('refused');
    await page.evaluate(() => void globalThis.open('https://example.com/'));
    await page.evaluate(() => location.assign('https://example.com/')).catch(() => {});
    await page.waitForTimeout(500);
    expect(app.windows()).toHaveLength(1);
    expect(page.url()).toBe('cellwain://shell/index.html');
  });

  test('a plan is opened and saved by the native menu', async (context) => {
    const { app, page, folder } = await start(context);
    const path = join(folder, 'a.wain');
    writeFileSync(path, planText('one'));
    await answerDialogs(app, path);
    await clickMenu(app, 'plan.open');
    await page.getByRole('heading', { name: 'one' }).waitFor();
    await clickMenu(app, 'option.duplicate');
    await expect.poll(() => page.title()).toMatch(/^• /);
    await clickMenu(app, 'plan.save');
    await expect.poll(() => page.title()).toMatch(/^a.wain/);
    expect(readFileSync(path, 'utf8')).not.toBe(planText('one'));
  });

  test('a window with edits asks before it closes', async (context) => {
    const { app, page } = await start(context);
    await clickMenu(app, 'option.duplicate');
    await expect.poll(() => page.title()).toMatch(/^• /);
    await app.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.close());
    await page.getByRole('alertdialog').getByRole('button', { name: 'Back to the plan' }).click();
    expect(app.windows()).toHaveLength(1);
  });

  test('the page becomes a PDF', async (context) => {
    const { app, page, folder } = await start(context);
    const path = join(folder, 'sheet.pdf');
    await answerDialogs(app, path);
    await page.evaluate(() =>
      (globalThis as unknown as { cellwainShell: ShellBridge }).cellwainShell.call.exportPdf({
        suggestedName: 'sheet',
        paper: 'A4',
        landscape: false,
      }),
    );
    expect(readFileSync(path).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('every permission is denied', async (context) => {
    const { page } = await start(context);
    const states = await page.evaluate(() =>
      Promise.all(
        (['geolocation', 'notifications', 'camera', 'microphone'] as PermissionName[]).map(
          async (name) => (await navigator.permissions.query({ name })).state,
        ),
      ),
    );
    expect(states).toEqual(['denied', 'denied', 'denied', 'denied']);
  });
});
