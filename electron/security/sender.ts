import type { IpcMainInvokeEvent } from 'electron';
import { pageScheme } from '#core/shell/bridge.ts';

/**
 * True only for the main frame of one of our windows showing our page. The origin is compared part
 * by part, not by prefix, and anything that cannot be read counts as foreign.
 */
export const isOwnPage = (event: IpcMainInvokeEvent): boolean => {
  const frame = event.senderFrame;
  if (frame === null || frame !== event.sender.mainFrame || frame.parent !== null) return false;
  try {
    const { protocol, host, username, password, port } = new URL(frame.url);
    const plain = username === '' && password === '' && port === '';
    return protocol === `${pageScheme}:` && host === 'shell' && plain;
  } catch {
    return false;
  }
};
