import type { ExportKind, LinkKey } from '#core/shell/documents.ts';
import { linkAddresses } from '#core/shell/links.ts';
import type { Host } from './host.ts';

export const browserLinks: Readonly<Record<LinkKey, string>> = linkAddresses;

export const browserPlatform = (): Host['platform'] => {
  if (/Mac|iPhone|iPad/.test(navigator.userAgent)) return 'mac';
  return navigator.userAgent.includes('Windows') ? 'windows' : 'linux';
};

export const exportTypes: Readonly<Record<ExportKind, string>> = {
  png: 'image/png',
  svg: 'image/svg+xml',
  csv: 'text/csv;charset=utf-8',
  html: 'text/html;charset=utf-8',
  json: 'application/json',
  txt: 'text/plain;charset=utf-8',
  ics: 'text/calendar;charset=utf-8',
};

/** A proposed file name with its ending and without signs a file system does not take. */
export const fileNameWith = (wish: string, ending: string): string => {
  const plain = wish.replaceAll(/[^\p{L}\p{N} ()_.,-]/gu, ' ').trim() || 'Plan';
  return plain.toLowerCase().endsWith(`.${ending}`) ? plain : `${plain}.${ending}`;
};
