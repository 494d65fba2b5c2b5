import { commandTable } from '#core/commands/command-table.ts';
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

/** Answers the shortcuts of the command table, where no native menu does. Returns the way to end it. */
export function listenForShortcuts(host: Host): () => void {
  const onKey = (event: KeyboardEvent): void => {
    const command = commandTable.find((entry) => {
      const keys = keysOf(entry, host.kind);
      return entry.actor !== 'system' && keys !== null && strokeMatches(event, keys, host.platform);
    });
    if (command === undefined) return;
    const isHistory = command.id === 'edit.undo' || command.id === 'edit.redo';
    if (isHistory && isTyping(event.target)) return;
    if (host.menuAnswersShortcuts) return;
    event.preventDefault();
    takeTyped();
    runCommand(command.id);
  };
  addEventListener('keydown', onKey);
  return () => removeEventListener('keydown', onKey);
}
