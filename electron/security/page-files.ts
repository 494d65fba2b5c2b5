import { randomBytes } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { extname, isAbsolute, relative, resolve } from 'node:path';
import { protectiveHeaders } from '#core/shell/content-policy.ts';

/** Stands in the built page where each answer puts its own nonce. */
const noncePlaceholder = '__PAGE_NONCE__';

const contentTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

export type PageAnswer = {
  readonly status: 200 | 400 | 404;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string | Buffer<ArrayBuffer>;
};

/**
 * File a request path means, or null when it means none of ours. The path is decoded once, kept
 * below the root by comparing resolved paths, and its ending must be one the page uses.
 */
export const fileOfRequest = (root: string, urlPath: string): string | null => {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    return null;
  }
  if (decoded.includes('\0') || decoded.includes('\\')) return null;
  const file = resolve(root, `.${decoded === '/' ? '/index.html' : decoded}`);
  const below = relative(root, file);
  if (below === '' || below.startsWith('..') || isAbsolute(below)) return null;
  return contentTypes[extname(file)] === undefined ? null : file;
};

const refusal = (status: 400 | 404, nonce: string): PageAnswer => ({
  status,
  headers: { ...protectiveHeaders(nonce), 'content-type': 'text/plain; charset=utf-8' },
  body: status === 400 ? 'Bad request' : 'Not found',
});

/** Answer to a request for a file of the page; the one place that sets its headers. */
export const answerPageRequest = async (root: string, urlPath: string): Promise<PageAnswer> => {
  const nonce = randomBytes(16).toString('hex');
  const file = fileOfRequest(root, urlPath);
  if (file === null) return refusal(400, nonce);
  try {
    const bytes = await readFile(file);
    const isPage = extname(file) === '.html';
    return {
      status: 200,
      headers: {
        ...protectiveHeaders(nonce),
        'content-type': contentTypes[extname(file)] ?? 'application/octet-stream',
      },
      body: isPage ? bytes.toString('utf8').replaceAll(noncePlaceholder, nonce) : bytes,
    };
  } catch {
    return refusal(404, nonce);
  }
};
