import type { CommandId } from '#core/commands/command-table.ts';
import type { MenuId } from '#core/commands/command.ts';
import type { Language } from '#core/plan/language.ts';
import { commandTable } from '#core/commands/command-table.ts';
import { wordsOf } from './spoken.ts';

const menus: Readonly<Record<MenuId, string>> = {
  file: 'File',
  edit: 'Edit',
  view: 'View',
  places: 'Places',
  help: 'Help',
};

const english = new Map<string, string>(commandTable.map(({ id, label }) => [id, label]));

/** Name of a command; English stands in the table. */
export const commandLabel = (id: CommandId, language: Language): string =>
  wordsOf(language)?.commands[id] ?? english.get(id) ?? id;

export const menuLabel = (menu: MenuId, language: Language): string =>
  (wordsOf(language)?.menus ?? menus)[menu];
