import type { ReactElement } from 'react';
import {
  Keyboard,
  Menu as Base,
  MenuItem,
  MenuSection,
  MenuTrigger,
  Popover,
} from 'react-aria-components';

export interface MenuEntry {
  readonly id: string;
  readonly label: string;
  readonly keys?: string | null;
  readonly isDisabled?: boolean;
  readonly run: () => void;
}

interface MenuProps {
  readonly label: string;
  /** The button that opens the menu. */
  readonly children: ReactElement;
  /** Groups, with a line between them. */
  readonly groups: readonly (readonly MenuEntry[])[];
}

/** Commands behind a button. What cannot act now is shown greyed. */
export const Menu = ({ label, children, groups }: MenuProps) => (
  <MenuTrigger>
    {children}
    <Popover className="popover" placement="bottom end">
      <Base className="list menu" aria-label={label}>
        {groups.map((entries) => (
          <MenuSection key={entries[0]?.id ?? ''} className="menu-group" aria-label={label}>
            {entries.map((entry) => (
              <MenuItem
                key={entry.id}
                id={entry.id}
                className="list-item"
                textValue={entry.label}
                isDisabled={entry.isDisabled ?? false}
                onAction={entry.run}
              >
                {entry.label}
                {entry.keys == null ? null : <Keyboard>{entry.keys}</Keyboard>}
              </MenuItem>
            ))}
          </MenuSection>
        ))}
      </Base>
    </Popover>
  </MenuTrigger>
);
