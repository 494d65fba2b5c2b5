import { createBrowserHost } from './browser-host.ts';
import { createElectronHost, shellBridge } from './electron-host.ts';
import type { Host } from './host.ts';

/** The host this page runs in: the desktop shell where its bridge is, else the browser. */
export const findHost = (version: string): Host => {
  const bridge = shellBridge();
  return bridge === null ? createBrowserHost(version) : createElectronHost(bridge);
};
