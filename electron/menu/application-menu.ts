import { Menu } from 'electron';
import type { CommandId } from '#core/commands/command-table.ts';
import type { Shell } from '../shell.ts';
import { openFromOutside } from '../windows/open-from-outside.ts';
import { sendTo } from '../windows/plan-window.ts';
import { menuTemplate } from './menu-template.ts';

const run = ({ windows }: Shell, id: CommandId): void => {
  if (id === 'window.new') {
    windows.open();
    return;
  }
  const front = windows.focused();
  if (front !== null) return sendTo(front, 'command', { id });
  // With all windows closed, a new window shows a new plan anyway.
  const fresh = windows.open();
  if (id !== 'plan.new') sendTo(fresh, 'command', { id });
};

/** Sets the menu bar anew. Cheap enough to do at every change of what can be done. */
export const showMenu = (shell: Shell): void => {
  const front = shell.windows.focused();
  const template = menuTemplate(
    {
      platform: process.platform,
      state: front?.menu ?? null,
      recent: shell.recent.names(),
      hasWindow: front !== null,
    },
    {
      run: (id) => run(shell, id),
      openRecent: (id) => {
        const path = shell.recent.pathOf(id);
        if (path !== null) void openFromOutside(shell, path);
      },
      forgetRecent: () => {
        void shell.recent.forget().then(() => shell.menuChanged());
      },
    },
  );
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
};
