import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { answerPageRequest } from '../security/page-files.ts';

export type RunningServer = { readonly url: string; close(): Promise<void> };

/**
 * Serves the built page to a browser on this machine, loopback only. A request must name this very
 * host and port: a foreign name that resolves to 127.0.0.1 gets nothing.
 *
 * @param root folder of the built page
 * @param port port to listen on, 0 for any free one
 */
export const servePage = async (root: string, port: number): Promise<RunningServer> => {
  const server: Server = createServer((request, response) => {
    const own = (server.address() as AddressInfo).port;
    const host = request.headers.host;
    const refuse = (status: number): void => {
      response.writeHead(status, { 'content-type': 'text/plain' }).end();
    };
    if (host !== `127.0.0.1:${own}` && host !== `localhost:${own}`) return refuse(403);
    if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(405);
    // The raw path, not a URL object: that would fold `..` away before the check sees it.
    const path = (request.url ?? '/').split(/[?#]/, 1)[0] ?? '/';
    void answerPageRequest(root, path).then((answer) => {
      response.writeHead(answer.status, { ...answer.headers });
      return response.end(request.method === 'HEAD' ? undefined : answer.body);
    });
  });
  await new Promise<void>((listening, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', listening);
  });
  const { port: own } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${own}/`,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
};
