import { contextBridge, ipcRenderer } from 'electron';
import {
  bridgeName,
  callChannels,
  eventChannels,
  type CallName,
  type EventName,
} from '#core/shell/bridge.ts';

/*
 * The only bridge between the page and the shell. The page gets plain functions, one for each known
 * channel; neither ipcRenderer nor an Electron event ever reaches it.
 */
const call = Object.fromEntries(
  (Object.keys(callChannels) as CallName[]).map((name) => [
    name,
    (payload: unknown) => ipcRenderer.invoke(callChannels[name], payload),
  ]),
);

const listen = Object.fromEntries(
  (Object.keys(eventChannels) as EventName[]).map((name) => [
    name,
    (listener: (message: unknown) => void) => {
      const forward = (_event: unknown, message: unknown): void => listener(message);
      ipcRenderer.on(eventChannels[name], forward);
      return () => {
        ipcRenderer.removeListener(eventChannels[name], forward);
      };
    },
  ]),
);

const platforms: Readonly<Record<string, string>> = { darwin: 'mac', win32: 'windows' };
const versionArgument = '--page-version=';
const version = process.argv.find((argument) => argument.startsWith(versionArgument));

contextBridge.exposeInMainWorld(bridgeName, {
  platform: platforms[process.platform] ?? 'linux',
  version: version?.slice(versionArgument.length) ?? '',
  call,
  listen,
});
