import { useState, type KeyboardEvent } from 'react';
import { Dialog as Base, Modal, ModalOverlay } from 'react-aria-components';
import { commandTable, type CommandId } from '#core/commands/command-table.ts';
import { closeDialog, useDocument } from '../../state/document-store.ts';
import { chooseOption, goTo } from '../../state/place-store.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { appTexts } from '../../text/app.ts';
import { commandLabel } from '../../text/commands.ts';
import { menuTexts } from '../../text/menu.ts';
import { useText } from '../../text/use-text.ts';
import { disabledCommands, offeredCommands, runCommand } from '../commands.ts';
import { useKeysOf } from '../use-keys.ts';

/** Cut, quit and the like act through the native menu alone. */
const isOfSystem = (id: CommandId): boolean =>
  commandTable.some((command) => command.id === id && command.actor === 'system');

interface PaletteEntry {
  readonly id: string;
  readonly label: string;
  readonly keys: string | null;
  readonly isDisabled: boolean;
  readonly run: () => void;
}

/** Find a command, a place or an option by typing part of its name. */
export const CommandPalette = () => {
  const text = useText(menuTexts);
  const app = useText(appTexts);
  const language = useSettings((state) => state.language);
  const host = useDocument((state) => state.host);
  const options = usePlan((plan) => plan.options);
  const keysOf = useKeysOf();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const disabled = disabledCommands();
  const entries: PaletteEntry[] = [
    ...offeredCommands(host?.kind ?? 'browser')
      .filter((id) => id !== 'view.palette' && !isOfSystem(id))
      .map((id) => ({
        id,
        label: commandLabel(id, language),
        keys: keysOf(id),
        isDisabled: disabled.has(id),
        run: () => runCommand(id),
      })),
    ...options.map((option) => ({
      id: `option:${option.id}`,
      label: option.name,
      keys: null,
      isDisabled: false,
      run: () => {
        chooseOption(option.id);
        goTo('packs');
      },
    })),
  ];
  const words = typed.toLowerCase().split(/\s+/);
  const found = entries.filter(({ label }) =>
    words.every((word) => label.toLowerCase().includes(word)),
  );
  const chosen = Math.min(at, found.length - 1);

  const take = (entry: PaletteEntry | undefined): void => {
    if (entry === undefined || entry.isDisabled) return;
    closeDialog();
    entry.run();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined) {
      event.preventDefault();
      setAt((chosen + step + found.length) % Math.max(1, found.length));
    } else if (event.key === 'Enter') take(found[chosen]);
  };
  return (
    <ModalOverlay
      className="overlay overlay-top"
      isOpen
      isDismissable
      onOpenChange={(open) => {
        if (!open) closeDialog();
      }}
    >
      <Modal className="dialog palette">
        <Base className="dialog-body" aria-label={app.find}>
          <input
            className="palette-input"
            type="text"
            role="combobox"
            aria-label={app.find}
            aria-expanded="true"
            aria-controls="palette-list"
            aria-activedescendant={found[chosen] === undefined ? undefined : `palette-${chosen}`}
            aria-autocomplete="list"
            placeholder={text.palettePlaceholder}
            autoFocus
            value={typed}
            onChange={(event) => {
              setTyped(event.target.value);
              setAt(0);
            }}
            onKeyDown={onKeyDown}
          />
          <ul className="list palette-list" id="palette-list" role="listbox" aria-label={app.find}>
            {found.map((entry, index) => (
              <li
                key={entry.id}
                id={`palette-${index}`}
                className="list-item"
                role="option"
                aria-selected={index === chosen}
                aria-disabled={entry.isDisabled}
                data-focused={index === chosen ? true : undefined}
                data-disabled={entry.isDisabled ? true : undefined}
                ref={(element) => {
                  if (index === chosen) element?.scrollIntoView({ block: 'nearest' });
                }}
                onClick={() => take(entry)}
                onKeyDown={onKeyDown}
              >
                {entry.label}
                {entry.keys === null ? null : <kbd>{entry.keys}</kbd>}
              </li>
            ))}
          </ul>
          {found.length === 0 ? <p className="palette-none soft">{text.paletteNone}</p> : null}
        </Base>
      </Modal>
    </ModalOverlay>
  );
};
