export type Platform = 'mac' | 'windows' | 'linux';
export type HostKind = 'desktop' | 'browser';

export const menus = ['file', 'edit', 'view', 'places', 'help'] as const;
export type MenuId = (typeof menus)[number];

export type MenuRole =
  | 'cut'
  | 'copy'
  | 'paste'
  | 'selectAll'
  | 'minimize'
  | 'togglefullscreen'
  | 'resetZoom'
  | 'zoomIn'
  | 'zoomOut'
  | 'quit'
  | 'close';

export type Command = {
  /** Stable; used by menu, palette, shortcuts and tests. */
  readonly id: string;
  /** As in menu and palette; an ellipsis when a question follows. */
  readonly label: string;
  readonly menu: MenuId;
  /** Commands of one group stand together, with a line between groups. */
  readonly group: number;
  /** Keys joined by `+`; `Mod` is Command on a Mac and Control elsewhere. */
  readonly keys?: string;
  /** Where a browser keeps those keys for itself; null means no shortcut there. */
  readonly browserKeys?: string | null;
  /** Who acts: the page, the shell around it, or the system through a menu role. */
  readonly actor: 'page' | 'shell' | 'system';
  readonly role?: MenuRole;
  /** Only in these hosts; everywhere when absent. */
  readonly host?: HostKind;
};
