import { EventEmitter } from 'node:events';
import { readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { app } from './app.mjs';
import { pageScript } from './page-side.mjs';
import { session, toAppAddress, toPageAddress, whenServed } from './session.mjs';
import { invokeHandler, nativeTheme, seen } from './small-modules.mjs';

let context = null;
const openContext = () => {
  context ??= chromium
    .connect(process.env.STANDIN_BROWSER)
    .then((browser) => browser.newContext({ viewport: { width: 1360, height: 880 } }));
  return context;
};

const required = {
  contextIsolation: true,
  sandbox: true,
  nodeIntegration: false,
  nodeIntegrationInWorker: false,
  nodeIntegrationInSubFrames: false,
  webSecurity: true,
  allowRunningInsecureContent: false,
  experimentalFeatures: false,
  webviewTag: false,
};
const refuseInsecure = (preferences) => {
  for (const [name, wanted] of Object.entries(required)) {
    if (preferences[name] !== wanted) throw new Error(`Insecure page: ${name} must be ${wanted}`);
  }
  if (preferences.enableBlinkFeatures !== undefined)
    throw new Error('Insecure page: blink features');
};

const eventFor = (url) => {
  const event = { url, prevented: false, isMainFrame: true, isSameDocument: false };
  event.preventDefault = () => {
    event.prevented = true;
  };
  return event;
};

/** Runs in the page. */
const post = ([name, content]) => globalThis.standinReceive(name, content);

class WebContents extends EventEmitter {
  page = null;
  openHandler = () => ({ action: 'allow' });
  mainFrame = { url: '', parent: null };
  #loading = false;
  #expected = '';
  constructor(preferences) {
    super();
    this.preferences = preferences;
    this.session = session.fromPartition(preferences.partition ?? '');
  }
  setWindowOpenHandler(handler) {
    this.openHandler = handler;
  }
  async load(url) {
    await whenServed();
    this.#expected = toPageAddress(url);
    const page = await (await openContext()).newPage();
    this.page = page;
    await this.#connect(page);
    this.emit('did-start-navigation', eventFor(url));
    this.#loading = true;
    await page.goto(this.#expected);
    this.#loading = false;
  }
  async #connect(page) {
    await page.exposeBinding('standinInvoke', ({ frame }, channel, payload) => {
      const isMain = frame === page.mainFrame();
      const sender = isMain ? this.mainFrame : { url: '', parent: this.mainFrame };
      sender.url = toAppAddress(frame.url());
      return invokeHandler(channel, { sender: this, senderFrame: sender }, payload);
    });
    const preload = readFileSync(this.preferences.preload, 'utf8');
    await page.addInitScript({ content: pageScript(preload, this.preferences) });
    await page.route('**/*', (route) => this.#decide(page, route));
    page.on('popup', (popup) => {
      if (this.openHandler({ url: popup.url() }).action === 'deny') void popup.close();
    });
    page.on('download', (download) => {
      const event = eventFor(download.url());
      this.session.emit('will-download', event);
      if (event.prevented) void download.cancel();
    });
    page.on('crash', () => {
      this.crashed = true;
      this.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 1 });
    });
  }
  /** Asks main before each navigation the page itself begins, as Electron does. */
  #decide(page, route) {
    const request = route.request();
    if (!request.isNavigationRequest() || (this.#loading && request.frame() === page.mainFrame())) {
      return route.continue();
    }
    const event = eventFor(toAppAddress(request.url()));
    const isMain = request.frame() === page.mainFrame();
    if (isMain) this.emit('will-navigate', event);
    this.emit('will-frame-navigate', event);
    if (event.prevented) return route.abort('aborted');
    if (isMain) this.emit('did-start-navigation', event);
    return route.continue();
  }
  send(channel, message) {
    void this.page?.evaluate(post, [channel, message]).catch(() => {});
  }
  reload() {
    const old = this.page;
    void this.load(this.#expected).then(() => old?.close().catch(() => {}));
    this.crashed = false;
  }
  async printToPDF({ pageSize, landscape, printBackground }) {
    return this.page.pdf({ format: pageSize, landscape, printBackground });
  }
  print(options, answer) {
    seen.printed.push(options);
    answer(true, '');
  }
}

let nextId = 1;
export class BrowserWindow extends EventEmitter {
  id = nextId;
  title = '';
  edited = false;
  represented = '';
  #destroyed = false;
  #minimized = false;
  constructor({ webPreferences, ...options }) {
    super();
    nextId += 1;
    refuseInsecure(webPreferences);
    this.options = options;
    this.title = options.title ?? '';
    this.webContents = new WebContents(webPreferences);
    app.windows.add(this);
    app.emit('web-contents-created', {}, this.webContents);
  }
  static focused = null;
  static getFocusedWindow() {
    return BrowserWindow.focused;
  }
  static fromWebContents(contents) {
    return [...app.windows].find((window) => window.webContents === contents) ?? null;
  }
  async loadURL(url) {
    await this.webContents.load(url);
    const colorScheme = nativeTheme.shouldUseDarkColors ? 'dark' : 'light';
    await this.webContents.page.emulateMedia({ colorScheme });
    this.emit('ready-to-show');
  }
  getBounds() {
    const { x, y, width, height } = this.options;
    return { x, y, width, height };
  }
  getNormalBounds() {
    return this.getBounds();
  }
  setTitle(title) {
    this.title = title;
  }
  setDocumentEdited(edited) {
    this.edited = edited;
  }
  setRepresentedFilename(path) {
    this.represented = path;
  }
  setBackgroundColor(colour) {
    this.options.backgroundColor = colour;
  }
  show() {
    this.visible = true;
    if (BrowserWindow.focused === null) this.focus();
  }
  focus() {
    BrowserWindow.focused = this;
    this.emit('focus');
  }
  isFocused() {
    return BrowserWindow.focused === this;
  }
  isMinimized() {
    return this.#minimized;
  }
  minimize() {
    this.#minimized = true;
  }
  restore() {
    this.#minimized = false;
  }
  isDestroyed() {
    return this.#destroyed;
  }
  close() {
    const event = eventFor('');
    this.emit('close', event);
    if (!event.prevented) this.destroy();
  }
  destroy() {
    if (this.#destroyed) return;
    this.#destroyed = true;
    app.windows.delete(this);
    if (BrowserWindow.focused === this) BrowserWindow.focused = null;
    void this.webContents.page?.close().catch(() => {});
    this.emit('closed');
    if (app.windows.size === 0) app.emit('window-all-closed');
  }
}
