import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import type { Host } from '../state/host.ts';
import {
  askAboutChange,
  mayLeave,
  offerRecovery,
  showPlan,
  take,
} from '../state/document-actions.ts';
import { useDocument } from '../state/document-store.ts';
import { isUnsaved, planStore } from '../state/plan-store.ts';
import { keepRecoveryCopy } from '../state/recovery-keeper.ts';
import { useSettings } from '../state/settings-store.ts';
import { sampleIn } from '../text/names.ts';
import { startChargingStudies } from '../state/charging-store.ts';
import { startCompareStudies } from '../state/compare-store.ts';
import { startFetchingAhead } from '../state/fetch-ahead.ts';
import { startStudies, useStudyState } from '../state/study-store.ts';
import { menuState } from './menu-state.ts';
import { pageCommands } from './page-commands.ts';
import { answerCommand, listenForShortcuts } from './shortcuts.ts';

/** Ties the page to the program around it, opens the first sample and starts the figures. Once, at the start. */
export function connectHost(host: Host): void {
  useDocument.setState({ host });
  showPlan(sampleIn(samplePlan('orchard-cart'), useSettings.getState().language), false);
  followLanguage();
  startChargingStudies();
  startCompareStudies();
  startStudies();
  fetchAheadLater();
  listenForShortcuts(host);
  host.onCommand(answerCommand);
  host.onOpenRequest((result) => {
    void mayLeave().then((may) => may && take(result));
  });
  host.onChangedOutside(() => void askAboutChange());
  host.onCloseRequest(async () => ((await mayLeave()) ? 'close' : 'stay'));
  void offerRecovery(false);
  keepHostInformed(host);
  keepRecoveryCopy(host);
}

/** Behind the first figures, so that they are not kept waiting. */
function fetchAheadLater(): void {
  const stop = useStudyState.subscribe(({ study, problems, failure }) => {
    if (study === null && problems.length === 0 && failure === null) return;
    stop();
    startFetchingAhead();
  });
}

/** An untouched sample is read in the language that is chosen; anything else stays as its writer wrote it. */
function followLanguage(): void {
  useSettings.subscribe(({ language }, old) => {
    const { plan, past, future } = planStore.getState();
    const isUntouched = plan.invented && past.length === 0 && future.length === 0;
    if (language === old.language || !isUntouched || useDocument.getState().fileName !== null)
      return;
    const same = sampleNames.find(
      (name) => sampleIn(samplePlan(name), old.language).name === plan.name,
    );
    if (same !== undefined) showPlan(sampleIn(samplePlan(same), language), false);
  });
}

/**
 * Calls `tell` with what is to be known now, and again whenever that has changed. Changes made
 * together are told together: between a new plan and its file name the host would let the file go.
 */
function follow<T>(know: () => T, tell: (known: T) => void): void {
  let last = '';
  const look = (): void => {
    const known = know();
    const now = JSON.stringify(known);
    if (now === last) return;
    last = now;
    tell(known);
  };
  look();
  let isDue = false;
  const changed = (): void => {
    if (isDue) return;
    isDue = true;
    queueMicrotask(() => {
      isDue = false;
      look();
    });
  };
  for (const store of [planStore, useDocument, useSettings, pageCommands]) {
    store.subscribe(changed);
  }
}

/** Title, unsaved mark, language and menu follow the plan. */
function keepHostInformed(host: Host): void {
  follow(
    () => {
      const { handle, fileName } = useDocument.getState();
      const state = planStore.getState();
      return { name: fileName ?? state.plan.name, handle, unsaved: isUnsaved(state) };
    },
    (state) => {
      host.setDocumentState(state);
      document.title = `${state.unsaved ? '• ' : ''}${state.name} – Cellwain`;
    },
  );
  follow(
    () => useSettings.getState().language,
    (language) => {
      document.documentElement.lang = language;
    },
  );
  follow(menuState, (state) => host.setMenuState(state));
}
