import type { LinkKey } from './documents.ts';

/** The only addresses the program ever hands to a browser; the page names them by key. */
export const linkAddresses = {
  'electron-licence': 'https://github.com/electron/electron/blob/main/LICENSE',
  'chromium-licences': 'https://source.chromium.org/chromium/chromium/src/+/main:LICENSE',
} as const satisfies Record<LinkKey, string>;
