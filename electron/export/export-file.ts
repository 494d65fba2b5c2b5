import { exportSizeLimitBytes } from '#core/shell/documents.ts';

/** Characters no file system takes or that would leave the folder, and Windows' device names. */
// oxlint-disable-next-line no-control-regex -- control characters are just what has to go
const unsafe = /[<>:"/\\|?*\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
const device = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

/** A file name to propose, made safe: the page's wish is only a wish. */
export const safeFileName = (wish: string, ending: string): string => {
  const withoutEnding = wish.toLowerCase().endsWith(`.${ending}`)
    ? wish.slice(0, -(ending.length + 1))
    : wish;
  const plain = withoutEnding
    .replaceAll(unsafe, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim()
    .replace(/^[. ]+/, '')
    .replace(/[. ]+$/, '')
    .slice(0, 100)
    .trim();
  const name = plain === '' || device.test(plain) ? `Plan ${plain}`.trim() : plain;
  return `${name}.${ending}`;
};

/** Path with the ending a kind of file has, for a user who typed none. */
export const withEnding = (path: string, ending: string): string =>
  path.toLowerCase().endsWith(`.${ending}`) ? path : `${path}.${ending}`;

export const exportBytes = (content: string | Uint8Array): Buffer | null => {
  const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : Buffer.from(content);
  return bytes.byteLength > exportSizeLimitBytes ? null : bytes;
};
