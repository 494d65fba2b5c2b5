import { commandTable, type CommandId } from '#core/commands/command-table.ts';
import { keysOf, strokeMatches } from '#core/commands/keys.ts';
import type { Host } from '../state/host.ts';
import { runCommand } from './commands.ts';

/** True while a field holds text that is not taken over yet: its own undo comes first. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.dataset['draft'] === 'true';

/** Takes over what is typed but not yet left, so that a command sees the plan as it looks on screen. */
const takeTyped = (): void => {
  const field = document.activeElement;
  if (!(field instanceof HTMLElement) || !isTyping(field)) return;
  field.blur();
  field.focus();
};

const isHistory = (id: CommandId): boolean => id === 'edit.undo' || id === 'edit.redo';

/** Carries out a command of the native menu. Undo belongs to the field while text is typed there. */
export function answerCommand(id: CommandId): void {
  if (isHistory(id) && isTyping(document.activeElement)) {
    document.execCommand(id === 'edit.undo' ? 'undo' : 'redo');
    return;
  }
  takeTyped();
  runCommand(id);
}

/**
 * Answers the shortcuts of the command table. Returns the way to end it. Where a native menu does
 * that, only undo and redo are left: the page gets a key first, and a field would take these for
 * itself even when nothing is typed in it.
 */
export function listenForShortcuts(host: Host): () => void {
  const onKey = (event: KeyboardEvent): void => {
    const command = commandTable.find((entry) => {
      const keys = keysOf(entry, host.kind);
      return entry.actor !== 'system' && keys !== null && strokeMatches(event, keys, host.platform);
    });
    if (command === undefined) return;
    if (isHistory(command.id) && isTyping(event.target)) return;
    if (host.menuAnswersShortcuts && !isHistory(command.id)) return;
    event.preventDefault();
    answerCommand(command.id);
  };
  addEventListener('keydown', onKey);
  return () => removeEventListener('keydown', onKey);
}
