import { useState } from 'react';
import { Dialog, DialogTrigger, Popover } from 'react-aria-components';
import type { MenuId } from '#core/commands/command.ts';
import { menus } from '#core/commands/command.ts';
import { commandTable } from '#core/commands/command-table.ts';
import { IconButton } from '../controls/Button.tsx';
import { Menu, type MenuEntry } from '../controls/Menu.tsx';
import { useDocument } from '../state/document-store.ts';
import { usePlanState } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { appTexts } from '../text/app.ts';
import { commandLabel } from '../text/commands.ts';
import { menuTexts } from '../text/menu.ts';
import { useText } from '../text/use-text.ts';
import { disabledCommands, offeredCommands, runCommand } from './commands.ts';
import { SettingsFields } from './SettingsFields.tsx';
import { useKeysOf } from './use-keys.ts';

/** Menus shown here; undo, find and places have buttons of their own in the bar. */
const shown: readonly MenuId[] = menus.filter((menu) => menu !== 'places');

/** All commands and the settings, for windows without a menu of their own. */
export const AppMenu = () => {
  const text = useText(appTexts);
  const words = useText(menuTexts);
  const language = useSettings((state) => state.language);
  const host = useDocument((state) => state.host);
  const keysOf = useKeysOf();
  const [isOpen, setOpen] = useState(false);
  // The greyed entries depend on the whole state; the menu is rendered anew with each change of it.
  usePlanState((state) => state);
  const offered = new Set(offeredCommands(host?.kind ?? 'browser'));
  const disabled = disabledCommands();
  const groups: MenuEntry[][] = [];
  for (const menu of shown) {
    for (const group of new Set(commandTable.filter((c) => c.menu === menu).map((c) => c.group))) {
      const entries = commandTable
        .filter((c) => c.menu === menu && c.group === group && c.actor !== 'system')
        .filter((c) => offered.has(c.id))
        .map(({ id }) => ({
          id,
          label: commandLabel(id, language),
          keys: keysOf(id),
          isDisabled: disabled.has(id),
          run: () => runCommand(id),
        }));
      if (entries.length > 0) groups.push(entries);
    }
  }
  return (
    <>
      <DialogTrigger isOpen={isOpen} onOpenChange={setOpen}>
        <IconButton icon="settings" label={words.settings} />
        <Popover className="popover" placement="bottom end">
          <Dialog className="popover-body" aria-label={words.settings}>
            <SettingsFields />
          </Dialog>
        </Popover>
      </DialogTrigger>
      <Menu label={text.more} groups={groups}>
        <IconButton icon="more" label={text.more} />
      </Menu>
    </>
  );
};
