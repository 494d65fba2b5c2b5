import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from './setup.mjs';

const packageFolder = join(projectFolder, 'node_modules', 'electron');

const executable = () => {
  const note = join(packageFolder, 'path.txt');
  if (!existsSync(note)) return null;
  const file = join(packageFolder, 'dist', readFileSync(note, 'utf8').trim());
  return existsSync(file) ? file : null;
};

/** Why a window cannot be opened here at all, or null. */
export const noWindowReason = () => {
  if (process.platform !== 'linux') return null;
  if (!process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return 'there is no display';
  // Electron does not start as root unless its sandbox is off, and it is never off here.
  if (process.getuid?.() === 0) return 'its sandbox does not work for the root user';
  return null;
};

/**
 * The Electron executable, fetched once if need be, or the reason why there is none.
 * `fetch: false` only looks.
 */
export const electronRuntime = ({ fetch }) => {
  const reason = noWindowReason();
  if (reason !== null) return { reason };
  const present = executable();
  if (present !== null) return { file: present };
  if (!fetch) return { reason: 'its runtime is not installed' };
  process.stderr.write("Fetching Electron's runtime (once, about 100 MB) ...\n");
  spawnSync(process.execPath, [join(packageFolder, 'install.js')], {
    stdio: 'ignore',
    timeout: 300_000,
  });
  const fetched = executable();
  return fetched === null ? { reason: 'its runtime could not be fetched' } : { file: fetched };
};
