import { menus } from '#core/commands/command.ts';
import { commandTable } from '#core/commands/command-table.ts';
import { Dialog } from '../../controls/Dialog.tsx';
import { closeDialog, useDocument } from '../../state/document-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { commandLabel, menuLabel } from '../../text/commands.ts';
import { menuTexts } from '../../text/menu.ts';
import { useText } from '../../text/use-text.ts';
import { offeredCommands } from '../commands.ts';
import { useKeysOf } from '../use-keys.ts';

/** Every shortcut of this host, by menu. */
export const ShortcutDialog = () => {
  const text = useText(menuTexts);
  const language = useSettings((state) => state.language);
  const host = useDocument((state) => state.host);
  const keysOf = useKeysOf();
  const offered = new Set(offeredCommands(host?.kind ?? 'browser'));
  return (
    <Dialog title={text.shortcutsTitle} isOpen onClose={closeDialog} size="large">
      <div className="shortcut-columns">
        {menus.map((menu) => (
          <section key={menu}>
            <h3 className="shortcut-head">{menuLabel(menu, language)}</h3>
            <dl className="shortcut-list">
              {commandTable
                .filter((command) => command.menu === menu && offered.has(command.id))
                .filter((command) => keysOf(command.id) !== null)
                .map(({ id }) => (
                  <div key={id}>
                    <dt>{commandLabel(id, language)}</dt>
                    <dd>
                      <kbd>{keysOf(id)}</kbd>
                    </dd>
                  </div>
                ))}
            </dl>
          </section>
        ))}
        <section>
          <h3 className="shortcut-head">{text.inFields}</h3>
          <dl className="shortcut-list">
            {text.inFieldsRows.map(([keys, does]) => (
              <div key={keys}>
                <dt>{does}</dt>
                <dd>
                  <kbd>{keys}</kbd>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      </div>
    </Dialog>
  );
};
