import { useEffect } from 'react';
import { createStore } from 'zustand';
import type { CommandId } from '#core/commands/command-table.ts';

/** Commands a place carries out while it is shown, such as the export of its chart. */
export const pageCommands = createStore<Partial<Record<CommandId, () => void>>>(() => ({}));

/** Lets the place on screen answer a command. */
export function usePageCommand(id: CommandId, run: () => void): void {
  useEffect(() => {
    pageCommands.setState({ [id]: run });
    return () => pageCommands.setState({ [id]: undefined });
  }, [id, run]);
}
