import { EventEmitter } from 'node:events';
import { createServer } from 'node:http';
import { app } from './app.mjs';

const privileged = new Map();

export const protocol = {
  registerSchemesAsPrivileged(schemes) {
    if (app.ready) throw new Error('Schemes must be registered before the app is ready');
    for (const { scheme, privileges } of schemes) privileged.set(scheme, privileges);
  },
};

/** Which scheme each local server plays; one for all sessions is enough here. */
let served = null;

/** The address in Electron's terms, whichever of the two was given. */
export const toAppAddress = (url) =>
  served !== null && url.startsWith(served.base) ? url.replace(served.base, served.origin) : url;
export const toPageAddress = (url) =>
  served !== null && url.startsWith(served.origin) ? url.replace(served.origin, served.base) : url;
export const servedPort = () => served?.port ?? null;
export const whenServed = () => served?.listening ?? Promise.resolve();

const serve = (scheme, handler) => {
  if (!privileged.has(scheme)) throw new Error(`Scheme ${scheme} was not registered`);
  const server = createServer((request, response) => {
    const host = request.headers.host?.split('.localhost')[0];
    const url = `${scheme}://${host}${request.url}`;
    Promise.resolve(handler({ url, method: request.method, headers: request.headers })).then(
      async (answer) => {
        response.writeHead(answer.status, Object.fromEntries(answer.headers));
        response.end(Buffer.from(await answer.arrayBuffer()));
      },
      (error) => response.writeHead(500).end(String(error)),
    );
  });
  const entry = { origin: `${scheme}://shell`, base: '', port: 0, listening: null };
  entry.listening = new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => {
      entry.port = server.address().port;
      entry.base = `http://shell.localhost:${entry.port}`;
      resolve();
    });
  });
  server.unref();
  served = entry;
};

class Session extends EventEmitter {
  handlers = {};
  protocol = { handle: serve };
  setPermissionRequestHandler(handler) {
    this.handlers.request = handler;
  }
  setPermissionCheckHandler(handler) {
    this.handlers.check = handler;
  }
  setDevicePermissionHandler(handler) {
    this.handlers.device = handler;
  }
  setDisplayMediaRequestHandler(handler) {
    this.handlers.displayMedia = handler;
  }
}

const sessions = new Map();
export const session = {
  fromPartition(name) {
    if (!sessions.has(name)) sessions.set(name, new Session());
    return sessions.get(name);
  },
  get defaultSession() {
    return session.fromPartition('');
  },
};
