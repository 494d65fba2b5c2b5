import { EventEmitter } from 'node:events';
import { app } from './app.mjs';

/** Everything main asked for that has no effect here, for tests to look at. */
export const seen = { dialogs: [], opened: [], copied: [], printed: [] };

/** Answers the test has laid ready, by dialog; a question without one is cancelled. */
export const answers = { open: [], save: [], message: [] };

export const dialog = {
  async showOpenDialog(_window, options) {
    seen.dialogs.push({ kind: 'open', options });
    const path = answers.open.shift();
    return path === undefined
      ? { canceled: true, filePaths: [] }
      : { canceled: false, filePaths: [path] };
  },
  async showSaveDialog(_window, options) {
    seen.dialogs.push({ kind: 'save', options });
    const path = answers.save.shift();
    return path === undefined
      ? { canceled: true, filePath: '' }
      : { canceled: false, filePath: path };
  },
  async showMessageBox(_window, options) {
    seen.dialogs.push({ kind: 'message', options });
    return { response: answers.message.shift() ?? options.cancelId ?? 0 };
  },
};

const handlers = new Map();
export const ipcMain = {
  handle(channel, handler) {
    if (handlers.has(channel)) throw new Error(`A second handler for ${channel}`);
    handlers.set(channel, handler);
  },
};
export const invokeHandler = async (channel, event, payload) => {
  const handler = handlers.get(channel);
  if (handler === undefined) throw new Error(`No handler registered for '${channel}'`);
  return handler(event, payload);
};

const roles = new Set(
  'cut copy paste selectAll minimize togglefullscreen resetZoom zoomIn zoomOut quit close appMenu windowMenu'.split(
    ' ',
  ),
);
const modifiers = new Set(['CommandOrControl', 'Shift', 'Alt']);

const checkItem = (item) => {
  if (item.role !== undefined && !roles.has(item.role)) throw new Error(`No role ${item.role}`);
  if (item.type !== 'separator' && item.label === undefined && item.role === undefined) {
    throw new Error('A menu item needs a label');
  }
  const parts = item.accelerator?.split('+') ?? [];
  if (parts.slice(0, -1).some((part) => !modifiers.has(part)) || parts.at(-1) === '') {
    throw new Error(`No such accelerator: ${item.accelerator}`);
  }
  for (const child of item.submenu ?? []) checkItem(child);
};

const find = (items, id) => {
  for (const item of items) {
    if (item.id === id) return item;
    const below = find(item.submenu ?? [], id);
    if (below !== null) return below;
  }
  return null;
};

let applicationMenu = [];
export const Menu = {
  buildFromTemplate(template) {
    for (const item of template) checkItem(item);
    return template;
  },
  setApplicationMenu(menu) {
    applicationMenu = menu;
  },
};
export const menuItem = (id) => find(applicationMenu, id);
export const clickMenu = (id) => {
  const item = menuItem(id);
  if (item === null) throw new Error(`No menu item ${id}`);
  if (item.enabled === false) throw new Error(`Menu item ${id} is disabled`);
  if (item.role === 'quit') return app.quit();
  if (item.role === 'close') return [...app.windows].find((window) => window.isFocused())?.close();
  return item.click?.();
};

class NativeTheme extends EventEmitter {
  shouldUseDarkColors = false;
}
export const nativeTheme = new NativeTheme();

export const screens = [{ id: 1, workArea: { x: 0, y: 0, width: 1920, height: 1040 } }];
export const screen = { getPrimaryDisplay: () => screens[0], getAllDisplays: () => screens };

export const shell = {
  async openExternal(url) {
    seen.opened.push(url);
  },
};
export const clipboard = {
  async writeText(text) {
    seen.copied.push(text);
  },
};
