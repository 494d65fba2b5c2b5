import { app, dialog } from 'electron';
import electronUpdater from 'electron-updater';
import type { ProblemLog } from '../diagnostics/problem-log.ts';
import { wordsFor } from '../text/language-of.ts';
import { lookForUpdate } from './look-for-update.ts';
import { checkedFeed } from './update-feed.ts';

/** Set when the program is built, by CELLWAIN_UPDATE_FEED. Without it this module is left out. */
declare const UPDATE_FEED: string;

const askToFetch = async (version: string): Promise<boolean> => {
  const { buttons, ...question } = wordsFor(null).update(version);
  const { response } = await dialog.showMessageBox({
    type: 'question',
    ...question,
    buttons: [...buttons],
    defaultId: 1,
    cancelId: 1,
  });
  return response === 0;
};

/** Looks for a newer version at the start of an installed program that was built with a feed. */
export const startUpdates = async (log: ProblemLog): Promise<void> => {
  if (!app.isPackaged) return;
  await lookForUpdate(electronUpdater.autoUpdater, checkedFeed(UPDATE_FEED), askToFetch, log);
};
