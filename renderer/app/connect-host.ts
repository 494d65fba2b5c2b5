import { samplePlan } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import type { Host } from '../state/host.ts';
import { askAboutChange, mayLeave, showPlan, take } from '../state/document-actions.ts';
import { openDialog, useDocument } from '../state/document-store.ts';
import { isUnsaved, planStore, type PlanState } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { startChargingStudies } from '../state/charging-store.ts';
import { startStudies } from '../state/study-store.ts';
import { disabledCommands, runCommand } from './commands.ts';
import { listenForShortcuts } from './shortcuts.ts';

/** A recovery copy is written this long [ms] after the last edit. */
const recoveryDelayMs = 1000;

/** Ties the page to the program around it, opens the first sample and starts the figures. Once, at the start. */
export function connectHost(host: Host): void {
  useDocument.setState({ host });
  showPlan(samplePlan('orchard-cart'), false);
  startChargingStudies();
  startStudies();
  listenForShortcuts(host);
  host.onCommand(runCommand);
  host.onOpenRequest((result) => {
    void mayLeave().then((may) => may && take(result));
  });
  host.onChangedOutside(() => void askAboutChange());
  host.onCloseRequest(async () => ((await mayLeave()) ? 'close' : 'stay'));
  void host.recoveryCopies().then((copies) => {
    if (copies.length > 0) openDialog({ kind: 'recovery', copies });
  });
  keepHostInformed(host);
  keepRecoveryCopy(host);
}

/** Title, unsaved mark, language and greyed commands follow the plan. */
function keepHostInformed(host: Host): void {
  const tell = (): void => {
    const state = planStore.getState();
    const { handle, fileName } = useDocument.getState();
    const name = fileName ?? state.plan.name;
    const unsaved = isUnsaved(state);
    host.setDocumentState({ name, handle, unsaved });
    host.setDisabledCommands([...disabledCommands()]);
    document.title = `${unsaved ? '• ' : ''}${name} – Cellwain`;
    document.documentElement.lang = useSettings.getState().language;
  };
  tell();
  planStore.subscribe(tell);
  useDocument.subscribe(tell);
  useSettings.subscribe(tell);
}

function keepRecoveryCopy(host: Host): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const write = (state: PlanState): void => {
    if (isUnsaved(state)) void host.writeRecoveryCopy(state.plan.name, writePlan(state.plan));
    else void host.discardOwnRecoveryCopy();
  };
  planStore.subscribe((state, old) => {
    if (state.plan === old.plan) return;
    clearTimeout(timer);
    timer = setTimeout(() => write(planStore.getState()), recoveryDelayMs);
  });
}
