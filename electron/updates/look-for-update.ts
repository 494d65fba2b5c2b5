import type { ProblemLog } from '../diagnostics/problem-log.ts';

/** The parts of the updating library used here. */
export type Updater = {
  autoDownload: boolean;
  autoInstallOnAppQuit: boolean;
  allowDowngrade: boolean;
  setFeedURL(options: { provider: 'generic'; url: string }): void;
  checkForUpdates(): Promise<{
    readonly isUpdateAvailable: boolean;
    readonly updateInfo: { readonly version: string };
  } | null>;
  downloadUpdate(): Promise<unknown>;
};

/**
 * Looks once for a newer version. Nothing is fetched before the user says yes, and nothing is
 * installed before the program is closed. A failure is noted and never disturbs the work.
 */
export const lookForUpdate = async (
  updater: Updater,
  feed: string,
  askToFetch: (version: string) => Promise<boolean>,
  log: ProblemLog,
): Promise<'none' | 'declined' | 'waits for the end' | 'failed'> => {
  updater.autoDownload = false;
  updater.autoInstallOnAppQuit = false;
  updater.allowDowngrade = false;
  try {
    updater.setFeedURL({ provider: 'generic', url: feed });
    const found = await updater.checkForUpdates();
    if (found === null || !found.isUpdateAvailable) return 'none';
    if (!(await askToFetch(found.updateInfo.version))) return 'declined';
    await updater.downloadUpdate();
    updater.autoInstallOnAppQuit = true;
    return 'waits for the end';
  } catch (error) {
    log.note('update', String(error));
    return 'failed';
  }
};
