import { commandTable, type CommandId } from '#core/commands/command-table.ts';
import type { HostKind } from '#core/commands/command.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { exportAs } from '../charts/export-chart.ts';
import {
  duplicatePlan,
  mayLeave,
  offerRecovery,
  open,
  revert,
  save,
  saveAs,
} from '../state/document-actions.ts';
import { openDialog, theHost, useDocument } from '../state/document-store.ts';
import { addOption, duplicateOption, optionLimit, removeOption } from '../state/option-actions.ts';
import { goTo } from '../state/place-store.ts';
import { isUnsaved, planStore, redo, undo } from '../state/plan-store.ts';
import { showToast } from '../state/toast-store.ts';
import { documentTexts } from '../text/documents.ts';
import { textNow } from '../text/use-text.ts';
import { pageCommands } from './page-commands.ts';
import { places } from './places.ts';

/** What the page does for a command. A command without an entry here is the shell's or a place's. */
const actions: Partial<Record<CommandId, () => void>> = {
  'plan.new': () => {
    void mayLeave().then((may) => {
      if (may) openDialog({ kind: 'new-plan' });
    });
  },
  'plan.open': () => void open(),
  'plan.openSample': () => openDialog({ kind: 'samples' }),
  'plan.recover': () => void offerRecovery(true),
  'plan.save': () => void save(),
  'plan.saveAs': () => void saveAs(),
  'plan.duplicate': duplicatePlan,
  'plan.revert': () => void revert(),
  'export.plan': () => {
    const { plan } = planStore.getState();
    void exportAs('json', plan.name === '' ? 'plan' : plan.name, writePlan(plan));
  },
  'edit.undo': undo,
  'edit.redo': redo,
  'option.add': () => addOption(),
  'option.duplicate': () => duplicateOption(),
  'option.remove': () => removeOption(),
  'view.palette': () => openDialog({ kind: 'palette' }),
  'help.shortcuts': () => openDialog({ kind: 'shortcuts' }),
  'help.working': () => openDialog({ kind: 'formulas' }),
  'help.about': () => openDialog({ kind: 'about' }),
  'help.report': () => {
    void theHost()
      .report()
      .then((report) => theHost().copyText(report))
      .then((copied) => {
        if (copied.ok) showToast(textNow(documentTexts).reportCopied);
      });
  },
  'sheet.print': () => goTo('sheet'),
  'export.pdf': () => goTo('sheet'),
  'window.new': () => void theHost().newWindow(),
};

/** Commands that exist in this host and whose place exists. */
export const offeredCommands = (host: HostKind): readonly CommandId[] =>
  commandTable
    .filter((command) => !('host' in command) || command.host === host)
    .filter(
      (command) =>
        command.menu !== 'places' || places.some((place) => place.command === command.id),
    )
    .map((command) => command.id);

/** What cannot act now; shown greyed, never hidden. */
export function disabledCommands(): ReadonlySet<CommandId> {
  const state = planStore.getState();
  const { plan, past, future } = state;
  const disabled = new Set<CommandId>();
  if (past.length === 0) disabled.add('edit.undo');
  if (future.length === 0) disabled.add('edit.redo');
  if (!isUnsaved(state)) disabled.add('plan.revert');
  if (plan.options.length <= 1) disabled.add('option.remove');
  if (plan.options.length >= optionLimit) disabled.add('option.add').add('option.duplicate');
  for (const { id, actor } of commandTable) {
    if (actor === 'page' && actionOf(id) === undefined) disabled.add(id);
  }
  return disabled;
}

const actionOf = (id: CommandId): (() => void) | undefined => {
  const place = places.find(({ command }) => command === id);
  if (place !== undefined) return () => goTo(place.id);
  // What the place on screen does for a command goes before the way that leads there.
  return pageCommands.getState()[id] ?? actions[id];
};

/** Carries a command out, unless it cannot act now or a question stands open. */
export function runCommand(id: CommandId): void {
  if (disabledCommands().has(id)) return;
  const { dialog } = useDocument.getState();
  if (dialog?.kind === 'unsaved' || dialog?.kind === 'changed-outside') return;
  actionOf(id)?.();
}
