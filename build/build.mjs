import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureInstalled, projectFolder } from './setup.mjs';

/** Bundle name to the folders whose files go into it. Each is written to dist/NAME. */
const bundles = {
  renderer: ['renderer', 'shared-core'],
  main: ['electron', 'shared-core'],
  preload: ['electron', 'shared-core/shell', 'shared-core/commands'],
  headless: ['electron/headless.ts', 'shared-core'],
  bench: ['tests/bench', 'tests/support', 'shared-core'],
  fuzz: ['tests/fuzz', 'tests/support', 'shared-core'],
  serve: ['electron/serve', 'electron/security', 'shared-core/shell'],
};
export const bundleNames = Object.keys(bundles);

const distFolder = join(projectFolder, 'dist');
const outputFolder = (name) => join(distFolder, name);

const filesUnder = (path) => {
  if (!existsSync(path)) return [];
  if (statSync(path).isFile()) return [path];
  return readdirSync(path, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? filesUnder(join(path, entry.name)) : [join(path, entry.name)],
  );
};

/** Changes when an input is edited, added or removed. Reads no file, so it takes milliseconds. */
const fingerprint = (name) => {
  const hash = createHash('sha256');
  const inputs = [...bundles[name], 'build/bundles', 'package-lock.json', 'package.json'];
  for (const file of inputs.flatMap((input) => filesUnder(join(projectFolder, input)))) {
    const { mtimeMs, size } = statSync(file);
    hash.update(`${file}\0${mtimeMs}\0${size}\n`);
  }
  hash.update(process.env.CELLWAIN_UPDATE_FEED ?? '');
  return hash.digest('hex');
};

const stampFile = (name) => join(distFolder, 'stamps', name);
const isCurrent = (name, stamp) =>
  existsSync(stampFile(name)) &&
  existsSync(outputFolder(name)) &&
  readFileSync(stampFile(name), 'utf8') === stamp;

const sleep = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

const ownerIsAlive = (lock) => {
  try {
    process.kill(Number(readFileSync(join(lock, 'pid'), 'utf8')), 0);
    return true;
  } catch (error) {
    // No permission to signal it means that it lives.
    if (error.code === 'EPERM') return true;
    // A lock without a pid was taken this instant, or by a process that died right then.
    return error.code === 'ENOENT' && Date.now() - statSync(lock).mtimeMs < 2000;
  }
};

/** Two commands started together must not write one bundle at the same time. */
const withLock = async (name, work) => {
  const lock = join(distFolder, 'stamps', `${name}.lock`);
  mkdirSync(join(distFolder, 'stamps'), { recursive: true });
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
      try {
        if (!ownerIsAlive(lock)) rmSync(lock, { recursive: true, force: true });
      } catch {
        // The owner let go between the two looks.
      }
      await sleep(50);
    }
  }
  writeFileSync(join(lock, 'pid'), String(process.pid));
  try {
    return await work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
};

const buildOne = async (name) => {
  const stamp = fingerprint(name);
  if (isCurrent(name, stamp)) return false;
  return withLock(name, async () => {
    if (isCurrent(name, stamp)) return false;
    const { build } = await import('vite');
    const { config } = await import(`./bundles/${name}.mjs`);
    // Built aside and moved in whole: a reader never meets half a bundle.
    const fresh = join(distFolder, `${name}.new-${process.pid}`);
    const old = join(distFolder, `${name}.old-${process.pid}`);
    try {
      await build(config(fresh));
      if (existsSync(outputFolder(name))) renameSync(outputFolder(name), old);
      renameSync(fresh, outputFolder(name));
    } finally {
      rmSync(fresh, { recursive: true, force: true });
      rmSync(old, { recursive: true, force: true });
    }
    writeFileSync(stampFile(name), stamp);
    return true;
  });
};

/** Brings the named bundles up to date; gives the names of those that had to be built. */
export const buildBundles = async (names = bundleNames) => {
  // Build tools take the mode from here and put in development checks under any other, such as the
  // one of the test runner.
  const mode = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  try {
    const built = [];
    for (const name of names) if (await buildOne(name)) built.push(name);
    return built;
  } finally {
    if (mode === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = mode;
  }
};

/** The same for a command line: a failed build is told without a stack and ends the command. */
export const buildOrExit = async (names) => {
  try {
    return await buildBundles(names);
  } catch (error) {
    process.stderr.write(`The build failed.\n${error.message}\n`);
    return process.exit(1);
  }
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureInstalled();
  const asked = process.argv.slice(2);
  const unknown = asked.filter((name) => !bundleNames.includes(name));
  if (unknown.length > 0) {
    process.stderr.write(
      `No bundle ${unknown.join(', ')}. There are: ${bundleNames.join(', ')}.\n`,
    );
    process.exit(2);
  }
  const built = await buildOrExit(asked.length > 0 ? asked : bundleNames);
  process.stderr.write(
    built.length > 0 ? `Built ${built.join(', ')}.\n` : 'Everything is up to date.\n',
  );
}
