import { menus, type MenuId } from '#core/commands/command.ts';
import { commandTable, type CommandId } from '#core/commands/command-table.ts';
import type { MenuState } from '#core/shell/menu-state.ts';
import { planStore } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { appTexts } from '../text/app.ts';
import { commandLabel, menuLabel } from '../text/commands.ts';
import { menuTexts } from '../text/menu.ts';
import { textNow } from '../text/use-text.ts';
import { disabledCommands } from './commands.ts';

/** The native menu in the user's language; undo and redo say what they would take back. */
export function menuState(): MenuState {
  const { language } = useSettings.getState();
  const { past, future } = planStore.getState();
  const text = textNow(appTexts);
  const words = textNow(menuTexts);
  const labels = Object.fromEntries(
    commandTable.map(({ id }) => [id, commandLabel(id, language)]),
  ) as Record<CommandId, string>;
  labels['edit.undo'] = text.undo(past.at(-1)?.name ?? null).slice(0, 200);
  labels['edit.redo'] = text.redo(future[0]?.name ?? null).slice(0, 200);
  return {
    language,
    disabled: [...disabledCommands()],
    labels,
    menus: Object.fromEntries(menus.map((menu) => [menu, menuLabel(menu, language)])) as Record<
      MenuId,
      string
    >,
    recent: words.recent,
    forgetRecent: words.forgetRecent,
  };
}
