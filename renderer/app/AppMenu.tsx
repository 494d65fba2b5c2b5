import { useState } from 'react';
import { Dialog, DialogTrigger, Popover } from 'react-aria-components';
import type { MenuId } from '#core/commands/command.ts';
import { menus } from '#core/commands/command.ts';
import { commandTable } from '#core/commands/command-table.ts';
import type { RecentFile } from '#core/shell/documents.ts';
import { IconButton } from '../controls/Button.tsx';
import { Menu, type MenuEntry, type TitledGroup } from '../controls/Menu.tsx';
import { openRecent } from '../state/document-actions.ts';
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

/** The settings and, where no native menu does, all commands with the files opened before. */
export const AppMenu = () => {
  const text = useText(appTexts);
  const words = useText(menuTexts);
  const language = useSettings((state) => state.language);
  const host = useDocument((state) => state.host);
  const keysOf = useKeysOf();
  const [isOpen, setOpen] = useState(false);
  const [recent, setRecent] = useState<readonly RecentFile[]>([]);
  // The greyed entries depend on the whole state; the menu is rendered anew when they change.
  usePlanState(() => [...disabledCommands()].join(' '));
  const offered = new Set(offeredCommands(host?.kind ?? 'browser'));
  const disabled = disabledCommands();
  const recentEntries: MenuEntry[] = [
    ...recent.map(({ id, name, available }) => ({
      id: `recent:${id}`,
      label: name,
      isDisabled: !available,
      run: () => void openRecent(id),
    })),
    { id: 'recent:forget', label: words.forgetRecent, run: () => void host?.forgetRecentFiles() },
  ];
  const groups: (readonly MenuEntry[] | TitledGroup)[] = [];
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
      if (entries.some(({ id }) => id === 'plan.open') && recent.length > 0) {
        groups.push({ title: words.recent, entries: recentEntries });
      }
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
      {host?.menuAnswersShortcuts === true ? null : (
        <Menu
          label={text.more}
          groups={groups}
          onOpen={() => void host?.recentFiles().then(setRecent)}
        >
          <IconButton icon="more" label={text.more} />
        </Menu>
      )}
    </>
  );
};
