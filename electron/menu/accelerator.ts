import type { Command } from '#core/commands/command.ts';
import { keysOf } from '#core/commands/keys.ts';

/** Keys of a command in Electron's spelling. */
export const acceleratorOf = (command: Command): string | undefined =>
  keysOf(command, 'desktop')?.replace('Mod', 'CommandOrControl') ?? undefined;
