import type { MenuItemConstructorOptions } from 'electron';
import { menus, type Command, type MenuId } from '#core/commands/command.ts';
import { commandTable, type CommandId } from '#core/commands/command-table.ts';
import type { MenuState } from '#core/shell/menu-state.ts';
import { acceleratorOf } from './accelerator.ts';

export type MenuBarState = {
  readonly platform: NodeJS.Platform;
  /** What the page of the window in front says; null before it has, or without a window. */
  readonly state: MenuState | null;
  readonly recent: readonly { readonly id: string; readonly name: string }[];
  readonly hasWindow: boolean;
};
export type MenuActions = {
  readonly run: (id: CommandId) => void;
  readonly openRecent: (id: string) => void;
  readonly forgetRecent: () => void;
};

const menuLabels: Readonly<Record<MenuId, string>> = {
  file: 'File',
  edit: 'Edit',
  view: 'View',
  places: 'Places',
  help: 'Help',
};

const separator: MenuItemConstructorOptions = { type: 'separator' };
/** These work with every window closed, as on a Mac. */
const windowless: ReadonlySet<CommandId> = new Set(['plan.new', 'plan.open', 'window.new']);

/** An ampersand in a file name is a letter, not the mark of a shortcut. */
const literal = (name: string): string => name.replaceAll('&', '&&');

const recentItem = (state: MenuBarState, actions: MenuActions): MenuItemConstructorOptions => ({
  id: 'recent',
  label: literal(state.state?.recent ?? 'Open recent'),
  enabled: state.recent.length > 0,
  submenu: [
    ...state.recent.map(({ id, name }) => ({
      id: `recent.${id}`,
      label: literal(name),
      click: () => actions.openRecent(id),
    })),
    separator,
    {
      id: 'recent.forget',
      label: literal(state.state?.forgetRecent ?? 'Forget these files'),
      click: () => actions.forgetRecent(),
    },
  ],
});

const commandItem = (
  command: Command & { id: CommandId },
  state: MenuBarState,
  actions: MenuActions,
): MenuItemConstructorOptions => {
  const accelerator = acceleratorOf(command);
  const shared = {
    id: command.id,
    label: literal(state.state?.labels[command.id] ?? command.label),
    ...(accelerator === undefined ? {} : { accelerator }),
  };
  if (command.role !== undefined) return { ...shared, role: command.role };
  return {
    ...shared,
    enabled:
      state.state?.disabled.includes(command.id) !== true &&
      (state.hasWindow || windowless.has(command.id)),
    click: () => actions.run(command.id),
  };
};

const oneMenu = (menu: MenuId, state: MenuBarState, actions: MenuActions) => {
  const items: MenuItemConstructorOptions[] = [];
  let group: number | null = null;
  for (const command of commandTable) {
    if (command.menu !== menu) continue;
    if (group !== null && group !== command.group) items.push(separator);
    group = command.group;
    items.push(commandItem(command, state, actions));
    if (command.id === 'plan.open') items.push(recentItem(state, actions));
  }
  return {
    id: menu,
    label: `&${literal(state.state?.menus[menu] ?? menuLabels[menu])}`,
    submenu: items,
  };
};

/** The whole menu bar, made from the command table and what can be done now. */
export const menuTemplate = (
  state: MenuBarState,
  actions: MenuActions,
): MenuItemConstructorOptions[] => {
  const bar = menus.map((menu) => oneMenu(menu, state, actions));
  return state.platform === 'darwin' ? [{ role: 'appMenu' }, ...bar, { role: 'windowMenu' }] : bar;
};
