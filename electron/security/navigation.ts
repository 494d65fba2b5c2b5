import type { App, WebContents } from 'electron';
import { pageOrigin } from '#core/shell/bridge.ts';

const pageAddress = `${pageOrigin}/index.html`;
export const startAddress = pageAddress;

const isThePage = (url: string): boolean => url.split('#', 1)[0] === pageAddress;

const veto = (event: { preventDefault(): void; url: string }): void => {
  if (!isThePage(event.url)) event.preventDefault();
};

/** The page stays where it is: it may load itself anew and go nowhere else, nor open anything. */
const fence = (contents: WebContents): void => {
  contents.on('will-navigate', veto);
  contents.on('will-frame-navigate', veto);
  contents.on('will-redirect', veto);
  contents.on('will-attach-webview', (event) => {
    event.preventDefault();
  });
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
};

/** Fences every page of the application, also one that a mistake of ours might create. */
export const fenceAllPages = (app: App): void => {
  app.on('web-contents-created', (_event, contents) => fence(contents));
};
