import { protocol, type Session } from 'electron';
import { pageOrigin, pageScheme } from '#core/shell/bridge.ts';
import { answerPageRequest } from './page-files.ts';

/** Must run before the application is ready. */
export const registerPageScheme = (): void => {
  protocol.registerSchemesAsPrivileged([
    { scheme: pageScheme, privileges: { standard: true, secure: true, codeCache: true } },
  ]);
};

/** Path of a request address as it was sent, before any parser folds `..` away. */
const rawPath = (url: string): string | null => {
  if (!url.startsWith(`${pageOrigin}/`)) return null;
  return url.slice(pageOrigin.length).split(/[?#]/, 1)[0] ?? '/';
};

/** Serves the built page, and only it, to the windows of one session. */
export const servePageFiles = (session: Session, root: string): void => {
  session.protocol.handle(pageScheme, async (request) => {
    const path = request.method === 'GET' ? rawPath(request.url) : null;
    if (path === null) return new Response('Not found', { status: 404 });
    const { status, headers, body } = await answerPageRequest(root, path);
    return new Response(body, { status, headers: { ...headers } });
  });
};
