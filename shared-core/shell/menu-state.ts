import type { CommandId } from '../commands/command-table.ts';
import type { MenuId } from '../commands/command.ts';
import type { Language } from '../plan/language.ts';

/** How the native menu reads for one window, and what in it cannot act now. The page holds all words. */
export type MenuState = {
  readonly language: Language;
  /** Shown greyed, never hidden. */
  readonly disabled: readonly CommandId[];
  /** Commands not named here read as in the command table. */
  readonly labels: Readonly<Partial<Record<CommandId, string>>>;
  readonly menus: Readonly<Record<MenuId, string>>;
  /** Title of the list of recent files, and its last entry, which empties it. */
  readonly recent: string;
  readonly forgetRecent: string;
};
