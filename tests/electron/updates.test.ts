import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type InlineConfig } from 'vite';
import { describe, expect, inject, test, vi } from 'vitest';
import { createProblemLog } from '#electron/diagnostics/problem-log.ts';
import { lookForUpdate, type Updater } from '#electron/updates/look-for-update.ts';
import { checkedFeed } from '#electron/updates/update-feed.ts';

const feed = 'https://updates.example.org/cellwain';
const log = () => createProblemLog(() => new Date(0));

const updater = (found: 'newer' | 'none' | 'fault') => ({
  autoDownload: true,
  autoInstallOnAppQuit: true,
  allowDowngrade: true,
  setFeedURL: vi.fn<Updater['setFeedURL']>(),
  checkForUpdates: vi.fn<Updater['checkForUpdates']>(() =>
    found === 'fault'
      ? Promise.reject(new Error('no network'))
      : Promise.resolve({
          isUpdateAvailable: found === 'newer',
          updateInfo: { version: '9.9.9' },
        }),
  ),
  downloadUpdate: vi.fn<Updater['downloadUpdate']>(() => Promise.resolve([])),
});

describe('updates', () => {
  test('are not in the program of an ordinary build at all', () => {
    const main = readFileSync(join(inject('shellFolder'), 'dist', 'main', 'main.js'), 'utf8');
    expect(main).not.toMatch(/electron-updater|autoUpdater|checkForUpdates|setFeedURL/);
  });

  test('are in a program whose build names a feed, with that feed', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'feed-build-'));
    vi.stubEnv('CELLWAIN_UPDATE_FEED', feed);
    try {
      // A copy of the module of its own, read after the variable is set.
      const path = '../../build/bundles/main.mjs?with-feed';
      const { config } = (await import(/* @vite-ignore */ path)) as {
        config: (folder: string) => InlineConfig;
      };
      await build(config(folder));
      const main = readFileSync(join(folder, 'main.js'), 'utf8');
      expect(main).toContain(`checkedFeed("${feed}")`);
      expect(main).toContain('autoUpdater');
    } finally {
      vi.unstubAllEnvs();
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test.each(['http://updates.example.org', 'file:///tmp/x', 'https://a:b@example.org', 'nonsense'])(
    'do not take %s as their feed',
    (address) => {
      expect(() => checkedFeed(address)).toThrow();
    },
  );

  test('fetch nothing before the user says yes', async () => {
    const fake = updater('newer');
    const ask = vi.fn((_version: string) => Promise.resolve(false));
    expect(await lookForUpdate(fake, feed, ask, log())).toBe('declined');
    expect(ask).toHaveBeenCalledWith('9.9.9');
    expect(fake.downloadUpdate).not.toHaveBeenCalled();
    expect(fake).toMatchObject({
      autoDownload: false,
      autoInstallOnAppQuit: false,
      allowDowngrade: false,
    });
  });

  test('are installed at the end of the program and not before', async () => {
    const fake = updater('newer');
    expect(await lookForUpdate(fake, feed, () => Promise.resolve(true), log())).toBe(
      'waits for the end',
    );
    expect(fake.downloadUpdate).toHaveBeenCalledOnce();
    expect(fake.autoInstallOnAppQuit).toBe(true);
  });

  test('ask nothing when there is no newer version', async () => {
    const ask = vi.fn((_version: string) => Promise.resolve(true));
    expect(await lookForUpdate(updater('none'), feed, ask, log())).toBe('none');
    expect(ask).not.toHaveBeenCalled();
  });

  test('that fail are noted and disturb nothing', async () => {
    const problems = log();
    const outcome = await lookForUpdate(
      updater('fault'),
      feed,
      () => Promise.resolve(true),
      problems,
    );
    expect(outcome).toBe('failed');
    expect(problems.lines().join()).toContain('no network');
  });
});
