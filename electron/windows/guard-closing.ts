import { app, dialog } from 'electron';
import { wordsFor } from '../text/language-of.ts';
import type { PlanWindow } from './plan-window.ts';

/** The shell's own question, for a page that does not answer. Staying is the default. */
const askInItsPlace = async (plan: PlanWindow): Promise<boolean> => {
  const { buttons, ...question } = wordsFor(plan).hung;
  const { response } = await dialog.showMessageBox(plan.window, {
    type: 'warning',
    ...question,
    buttons: [...buttons],
    defaultId: 1,
    cancelId: 1,
  });
  return response === 0;
};

/**
 * Holds a window with unsaved edits open until its page has asked the user. After a yes the window
 * goes, and if the whole program was about to end, that goes on.
 */
export const guardClosing = (
  plan: PlanWindow,
  quitting: { now: boolean },
  beforeClose: () => void,
): void => {
  const ask = async (): Promise<void> => {
    const answer = await plan.guard.ask();
    if (plan.window.isDestroyed()) return;
    const agreed = answer === 'silent' ? await askInItsPlace(plan) : answer === 'close';
    if (!agreed) {
      quitting.now = false;
      return;
    }
    // Closed without an answer from the page: the recovery copy is all that is left of the edits.
    plan.mayClose = answer === 'close';
    const goOn = quitting.now;
    plan.window.destroy();
    if (goOn) app.quit();
  };
  plan.window.on('close', (event) => {
    beforeClose();
    if (!plan.state.unsaved) {
      plan.mayClose = true;
      return;
    }
    event.preventDefault();
    if (!plan.guard.isAsking()) void ask();
  });
};
