import { readPlan } from '#core/plan/read-plan.ts';
import { samplePlan, type SampleName } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import type { OpenedPlan } from '#core/shell/documents.ts';
import { failure, type HostResult } from '#core/shell/failure.ts';
import { documentTexts } from '../text/documents.ts';
import { sampleIn } from '../text/names.ts';
import { textNow } from '../text/use-text.ts';
import { readText } from './browser-files.ts';
import { closeDialog, openDialog, theHost, useDocument } from './document-store.ts';
import { isUnsaved, markSaved, planStore, replacePlan, stateId, undo } from './plan-store.ts';
import { useSettings } from './settings-store.ts';
import { showToast } from './toast-store.ts';

/** Puts a plan that is in no file in place: new, sample, copy. */
export function showPlan(plan: Plan, unsaved: boolean): void {
  replacePlan(plan, unsaved);
  useDocument.setState({ handle: null, fileName: null, access: 'writable' });
}

/** Asks about unsaved changes, where there are any. True when the plan may go. */
export async function mayLeave(): Promise<boolean> {
  if (!isUnsaved(planStore.getState())) return true;
  const choice = await new Promise<'save' | 'discard' | 'stay'>((answer) => {
    openDialog({ kind: 'unsaved', answer });
  });
  closeDialog();
  // The recovery copy goes when the plan does: the user may still back out of what comes next.
  return choice === 'discard' || (choice === 'save' && (await save()));
}

/** Takes what the host has read. The plan on screen stays where it cannot be used. */
export function take(result: HostResult<OpenedPlan>, isRecovery = false): boolean {
  const text = textNow(documentTexts);
  if (!result.ok) {
    if (result.code !== 'cancelled')
      openDialog({ kind: 'failure', failure: result, during: 'open' });
    return false;
  }
  const { name, handle, text: content, access } = result.value;
  const read = readPlan(content, { language: useSettings.getState().language });
  if (!read.ok) {
    const { path, problem, remedy } = read.problem;
    const detail = failure('bad-plan', { name, field: path, problem, remedy });
    openDialog({ kind: 'failure', failure: detail, during: 'open' });
    return false;
  }
  replacePlan(read.plan, isRecovery);
  useDocument.setState({ handle, fileName: handle === null ? null : name, access });
  if (isRecovery) showToast(text.recovered(name));
  else if (access === 'read-only') showToast(text.readOnly(name));
  else if (read.migratedFrom !== undefined) showToast(text.migrated(read.migratedFrom));
  else if (read.leftOut.length > 0) showToast(text.leftOut(read.leftOut.slice(0, 3).join(', ')));
  else showToast(text.opened(name));
  return true;
}

const saveWith = async (asNew: boolean, replaceChanged = false): Promise<boolean> => {
  const host = theHost();
  const { handle } = useDocument.getState();
  const state = planStore.getState();
  const request = {
    handle,
    text: writePlan(state.plan),
    suggestedName: state.plan.name === '' ? 'plan' : state.plan.name,
    revision: stateId(state),
    replaceChanged,
  };
  const result = await (asNew ? host.savePlanAs(request) : host.savePlan(request));
  if (!result.ok) {
    if (result.code === 'cancelled') return false;
    if (result.code === 'changed-outside') return askAboutChange();
    openDialog({ kind: 'failure', failure: result, during: 'save' });
    return false;
  }
  markSaved(result.value.revision);
  const { name: fileName, handle: newHandle } = result.value;
  useDocument.setState({ handle: newHandle, fileName, access: 'writable' });
  if (!isUnsaved(planStore.getState())) await host.discardOwnRecoveryCopy();
  showToast(textNow(documentTexts).saved(fileName));
  return true;
};

export const save = (): Promise<boolean> => {
  const { handle, access } = useDocument.getState();
  return saveWith(handle === null || access === 'read-only');
};
export const saveAs = (): Promise<boolean> => saveWith(true);

/** The file was written by another program. True when the plan is on disk afterwards. */
export async function askAboutChange(): Promise<boolean> {
  const choice = await new Promise<'replace' | 'read' | 'stay'>((answer) => {
    openDialog({ kind: 'changed-outside', answer });
  });
  closeDialog();
  if (choice === 'replace') return saveWith(false, true);
  if (choice === 'read') return revert();
  return false;
}

/** Reads the file again; without a file, all edits are undone. The edits can be brought back. */
export async function revert(): Promise<boolean> {
  const host = theHost();
  const { handle } = useDocument.getState();
  const before = planStore.getState();
  if (handle === null) {
    while (isUnsaved(planStore.getState()) && planStore.getState().past.length > 0) undo();
  } else if (!take(await host.readAgain(handle))) return false;
  const text = textNow(documentTexts);
  // What was saved back then need not be what the file holds now, so no state counts as saved.
  const savedId = handle === null ? before.savedId : 0;
  showToast(text.reverted, {
    label: text.back,
    run: () => planStore.setState({ ...before, savedId }),
  });
  return true;
}

export async function open(): Promise<void> {
  if (await mayLeave()) take(await theHost().openPlan());
}

export async function openRecent(id: string): Promise<void> {
  if (await mayLeave()) take(await theHost().openRecent(id));
}

export async function openSample(name: SampleName): Promise<void> {
  if (await mayLeave())
    showPlan(sampleIn(samplePlan(name), useSettings.getState().language), false);
}

/** A copy of the plan under another name, in no file yet. */
export function duplicatePlan(): void {
  const text = textNow(documentTexts);
  const { plan } = planStore.getState();
  showPlan({ ...plan, name: text.duplicate(plan.name).slice(0, 120) }, true);
  showToast(text.duplicated);
}

/** A file dropped into the window. Only one that is a plan raises the question about the present one. */
export async function openDroppedFile(file: File): Promise<void> {
  const read = await readText(file);
  const result = read.ok ? await theHost().openDropped(file.name, read.value) : read;
  if (!result.ok || (await mayLeave())) take(result);
}

/** Offers what windows that ended without closing have left; `isAsked` says so when there is nothing. */
export async function offerRecovery(isAsked: boolean): Promise<void> {
  const copies = await theHost().recoveryCopies();
  if (copies.length > 0) openDialog({ kind: 'recovery', copies });
  else if (isAsked) showToast(textNow(documentTexts).nothingToRecover);
}
