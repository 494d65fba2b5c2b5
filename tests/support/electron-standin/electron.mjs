/*
 * A stand-in of the `electron` module for machines without its runtime: the compiled main and
 * preload run unchanged in plain Node, and each window is a real Chromium page.
 *
 * What it cannot show, so that a green run here proves nothing about it:
 * - one JavaScript world: the preload runs in the page's own, not isolated from it;
 * - another origin: the page's scheme is served as http://shell.localhost and translated back;
 * - no real fuses, sandbox, menus, dialogs, keyboard shortcuts, file association or permissions:
 *   these are held as what main asked for, and tests look at that;
 * - printing makes a PDF by Chromium's own command, with fewer options.
 */
import { app } from './app.mjs';
import { BrowserWindow } from './browser-window.mjs';
import { listenForTest } from './control.mjs';
import { clipboard, dialog, ipcMain, Menu, nativeTheme, screen, shell } from './small-modules.mjs';
import { protocol, session } from './session.mjs';

listenForTest();

export {
  app,
  BrowserWindow,
  clipboard,
  dialog,
  ipcMain,
  Menu,
  nativeTheme,
  protocol,
  screen,
  session,
  shell,
};
