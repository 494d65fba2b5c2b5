import { EventEmitter } from 'node:events';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = process.env.STANDIN_FOLDER;
const lockFile = join(folder, 'user-data', 'instance-lock');
const callsFolder = join(folder, 'user-data', 'second-instances');
const paths = {
  userData: join(folder, 'user-data'),
  documents: join(folder, 'documents'),
  home: join(folder, 'home'),
};
for (const path of Object.values(paths)) mkdirSync(path, { recursive: true });

const isAlive = (pid) => {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
};

class App extends EventEmitter {
  windows = new Set();
  isPackaged = false;
  sandboxed = false;
  ready = false;
  #ready = new Promise((resolve) => setTimeout(resolve, 0)).then(() => {
    this.ready = true;
  });
  whenReady() {
    return this.#ready;
  }
  enableSandbox() {
    if (this.ready) throw new Error('enableSandbox must be called before the app is ready');
    this.sandboxed = true;
  }
  getVersion() {
    return process.env.STANDIN_VERSION ?? '0.0.0';
  }
  getLocale() {
    return process.env.STANDIN_LOCALE ?? 'en-GB';
  }
  getPath(name) {
    if (paths[name] === undefined) throw new Error(`No path ${name} in the stand-in`);
    return paths[name];
  }
  requestSingleInstanceLock() {
    const owner = existsSync(lockFile) ? Number(readFileSync(lockFile, 'utf8')) : null;
    if (owner !== null && owner !== process.pid && isAlive(owner)) {
      mkdirSync(callsFolder, { recursive: true });
      const call = { argv: process.argv, folder: process.cwd() };
      writeFileSync(join(callsFolder, `${process.pid}.tmp`), JSON.stringify(call));
      writeFileSync(join(callsFolder, `${process.pid}.json`), JSON.stringify(call));
      return false;
    }
    writeFileSync(lockFile, String(process.pid));
    setInterval(() => this.#takeCalls(), 50).unref();
    return true;
  }
  #takeCalls() {
    if (!existsSync(callsFolder)) return;
    for (const name of readdirSync(callsFolder).filter((entry) => entry.endsWith('.json'))) {
      const file = join(callsFolder, name);
      const { argv, folder: from } = JSON.parse(readFileSync(file, 'utf8'));
      rmSync(file);
      this.emit('second-instance', {}, argv, from);
    }
  }
  quit() {
    this.emit('before-quit', { preventDefault() {} });
    for (const window of this.windows) window.close();
    // Closing may wait for an answer; whoever agrees to it calls quit again.
    if (this.windows.size === 0) this.exit(0);
  }
  exit(code) {
    if (existsSync(lockFile) && Number(readFileSync(lockFile, 'utf8')) === process.pid) {
      rmSync(lockFile, { force: true });
    }
    // File work begun by a closing window may still be on its way.
    setTimeout(() => process.exit(code), 100);
  }
}

export const app = new App();
