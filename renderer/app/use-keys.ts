import { commandTable, type CommandId } from '#core/commands/command-table.ts';
import { describeKeys, keysOf } from '#core/commands/keys.ts';
import { useDocument } from '../state/document-store.ts';

/** Shortcut of a command as this platform writes it; null where it has none in this host. */
export function useKeysOf(): (id: CommandId) => string | null {
  const host = useDocument((state) => state.host);
  return (id) => {
    const command = commandTable.find((entry) => entry.id === id);
    if (command === undefined || host === null) return null;
    const keys = keysOf(command, host.kind);
    return keys === null ? null : describeKeys(keys, host.platform);
  };
}
