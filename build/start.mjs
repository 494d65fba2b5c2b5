import { spawn, spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { buildOrExit } from './build.mjs';
import { electronRuntime } from './electron-runtime.mjs';
import { ensureInstalled, projectFolder } from './setup.mjs';

const usage = `npm start [-- options]
  --browser     use the browser even where Electron can run
  --no-open     like --browser, but print the address and open nothing
  --port N      like --browser, on this port (default: any free one)
`;

const readArguments = () => {
  try {
    const { values } = parseArgs({
      options: {
        browser: { type: 'boolean', default: false },
        'no-open': { type: 'boolean', default: false },
        port: { type: 'string' },
        help: { type: 'boolean', default: false },
      },
    });
    const port = Number(values.port ?? 0);
    if (!Number.isInteger(port) || port < 0 || port > 65535) {
      throw new Error(`--port takes a whole number from 0 to 65535, not ${values.port}`);
    }
    const browser = values.browser || values['no-open'] || values.port !== undefined;
    return { ...values, browser, port };
  } catch (error) {
    process.stderr.write(`${error.message}\n${usage}`);
    return process.exit(2);
  }
};

const dist = (...parts) => join(projectFolder, 'dist', ...parts);

/** Resolves with null when the window was used and closed, else with the reason it did not open. */
const runElectron = (file) =>
  new Promise((resolve) => {
    const begun = Date.now();
    const child = spawn(file, [projectFolder], { stdio: ['ignore', 'inherit', 'ignore'] });
    const stop = () => child.kill();
    process.once('SIGINT', stop).once('SIGTERM', stop);
    child.once('error', (error) => resolve(`it did not start (${error.code})`));
    child.once('exit', (code) => {
      const failed = code !== 0 && Date.now() - begun < 10_000 && !child.killed;
      resolve(failed ? `it ended at once (code ${code})` : null);
    });
  });

const openBrowser = (url) => {
  const [command, ...before] = { darwin: ['open'], win32: ['cmd', '/c', 'start', ''] }[
    process.platform
  ] ?? ['xdg-open'];
  const child = spawn(command, [...before, url], { stdio: 'ignore', detached: true });
  // No browser is no failure: the address is printed.
  child.once('error', () => {});
  child.unref();
};

const serveToBrowser = async ({ port, 'no-open': noOpen }) => {
  const { servePage } = await import(pathToFileURL(dist('serve', 'serve.mjs')).href);
  const server = await servePage(dist('renderer'), port).catch((error) => {
    process.stderr.write(
      `Port ${port} cannot be used (${error.code}); choose another with --port.\n`,
    );
    return process.exit(1);
  });
  console.log(`Cellwain: ${server.url}  (Ctrl-C stops it)`);
  if (!noOpen) openBrowser(server.url);
  const stop = () => {
    void server.close().then(() => process.exit(0));
  };
  process.once('SIGINT', stop).once('SIGTERM', stop);
};

const options = readArguments();
if (options.help) {
  process.stdout.write(usage);
  process.exit(0);
}
ensureInstalled();
await buildOrExit();
spawnSync(process.execPath, [dist('headless', 'headless.mjs'), 'demo'], { stdio: 'inherit' });

const runtime = options.browser
  ? { reason: 'you asked for the browser' }
  : electronRuntime({ fetch: true });
const reason = runtime.file === undefined ? runtime.reason : await runElectron(runtime.file);
if (reason !== null) {
  console.log(`No Electron window: ${reason}. Serving the same interface to the browser instead.`);
  await serveToBrowser(options);
}
