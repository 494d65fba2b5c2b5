import type { WebPreferences } from 'electron';

/** Settings of every page. Most are Electron's defaults; they stand here so that a test can hold them. */
export const pagePreferences = (preload: string, version: string, isPackaged: boolean) =>
  ({
    preload,
    contextIsolation: true,
    sandbox: true,
    nodeIntegration: false,
    nodeIntegrationInWorker: false,
    nodeIntegrationInSubFrames: false,
    webSecurity: true,
    allowRunningInsecureContent: false,
    experimentalFeatures: false,
    webviewTag: false,
    navigateOnDragDrop: false,
    spellcheck: false,
    devTools: !isPackaged,
    partition: 'persist:plans',
    additionalArguments: [`--page-version=${version}`],
  }) satisfies WebPreferences;
export const pagePartition = 'persist:plans';
