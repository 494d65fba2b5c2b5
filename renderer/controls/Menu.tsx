import type { ReactElement } from 'react';
import {
  Header,
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

/** Entries that stand together; a title is shown above them. */
export interface TitledGroup {
  readonly title: string;
  readonly entries: readonly MenuEntry[];
}
type MenuGroup = readonly MenuEntry[] | TitledGroup;

const isTitled = (group: MenuGroup): group is TitledGroup => 'title' in group;

interface MenuProps {
  readonly label: string;
  /** The button that opens the menu. */
  readonly children: ReactElement;
  /** Groups, with a line between them. */
  readonly groups: readonly MenuGroup[];
  readonly onOpen?: () => void;
}

/** Commands behind a button. What cannot act now is shown greyed. */
export const Menu = ({ label, children, groups, onOpen }: MenuProps) => (
  <MenuTrigger
    onOpenChange={(isOpen) => {
      if (isOpen) onOpen?.();
    }}
  >
    {children}
    <Popover className="popover" placement="bottom end">
      <Base className="list menu" aria-label={label}>
        {groups.map((group) => (
          <Group key={entriesOf(group)[0]?.id ?? ''} group={group} label={label} />
        ))}
      </Base>
    </Popover>
  </MenuTrigger>
);

const entriesOf = (group: MenuGroup): readonly MenuEntry[] =>
  isTitled(group) ? group.entries : group;

const Group = ({ group, label }: { readonly group: MenuGroup; readonly label: string }) => (
  <MenuSection className="menu-group" {...(isTitled(group) ? {} : { 'aria-label': label })}>
    {isTitled(group) ? <Header className="list-head">{group.title}</Header> : null}
    {entriesOf(group).map((entry) => (
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
);
