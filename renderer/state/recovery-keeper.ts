import { writePlan } from '#core/plan/write-plan.ts';
import { documentTexts } from '../text/documents.ts';
import { textNow } from '../text/use-text.ts';
import type { Host } from './host.ts';
import { isUnsaved, planStore } from './plan-store.ts';
import { showToast } from './toast-store.ts';

/** A recovery copy is begun this long [ms] after the first edit it does not hold yet. */
export const recoveryDelayMs = 1000;

/** Keeps the recovery copy of this window in step with the plan. Returns the way to end it. */
export function keepRecoveryCopy(
  host: Pick<Host, 'writeRecoveryCopy' | 'discardOwnRecoveryCopy'>,
): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let hasFailed = false;
  const write = async (): Promise<void> => {
    timer = undefined;
    const state = planStore.getState();
    if (!isUnsaved(state)) return host.discardOwnRecoveryCopy();
    const written = await host.writeRecoveryCopy(state.plan.name, writePlan(state.plan));
    // Told once, not every second: the disk stays full while the user makes room.
    if (!written.ok && !hasFailed) showToast(textNow(documentTexts).recoveryFails);
    hasFailed = !written.ok;
  };
  const stop = planStore.subscribe((state, old) => {
    if (state.plan === old.plan && state.savedId === old.savedId) return;
    // Later edits do not put it off: a key held down would keep the copy from ever being written.
    timer ??= setTimeout(() => void write(), recoveryDelayMs);
  });
  return () => {
    stop();
    clearTimeout(timer);
  };
}
