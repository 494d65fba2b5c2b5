import { dialog } from 'electron';
import type { ProblemLog } from '../diagnostics/problem-log.ts';
import { wordsFor } from '../text/language-of.ts';
import { markLoading, type PlanWindow } from './plan-window.ts';

/** A page that crashed is loaded once more, and finds its recovery copy; a second time the user is told. */
export const reloadAfterCrash = (plan: PlanWindow, log: ProblemLog): void => {
  const { webContents } = plan.window;
  webContents.on('render-process-gone', (_event, { reason, exitCode }) => {
    log.note('page', `ended: ${reason} (${exitCode})`);
    if (reason === 'clean-exit') return;
    markLoading(plan);
    plan.crashes += 1;
    if (plan.crashes === 1) {
      webContents.reload();
      return;
    }
    const { buttons, ...told } = wordsFor(plan).crashed;
    void dialog.showMessageBox(plan.window, { type: 'error', ...told, buttons: [...buttons] });
  });
  plan.window.on('unresponsive', () => log.note('page', 'does not respond'));
  webContents.on('preload-error', (_event, _path, error) => log.note('preload', String(error)));
};
