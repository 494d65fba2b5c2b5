import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectFolder = fileURLToPath(new URL('..', import.meta.url));

/**
 * What npm wrote down at its last install. Compared with the lock file by content, not by time:
 * a fresh clone and a changed branch both set times that say nothing.
 */
const installedPackages = (file) => {
  const packages = JSON.parse(readFileSync(file, 'utf8')).packages ?? {};
  return new Map(
    Object.entries(packages)
      .filter(([path]) => path !== '')
      .map(([path, entry]) => [path, entry]),
  );
};

const installIsCurrent = () => {
  const installed = join(projectFolder, 'node_modules', '.package-lock.json');
  if (!existsSync(installed)) return false;
  const wanted = installedPackages(join(projectFolder, 'package-lock.json'));
  const present = installedPackages(installed);
  for (const [path, entry] of wanted) {
    const found = present.get(path);
    // Packages for other systems are in the lock file and rightly not installed.
    if (found === undefined && entry.optional !== true) return false;
    if (found !== undefined && found.version !== entry.version) return false;
  }
  return true;
};

/** Installs what the lock file names if it is not there yet. Writes to standard error only. */
export const ensureInstalled = () => {
  if (installIsCurrent()) return;
  process.stderr.write('Installing the packages of package-lock.json (once, about a minute) ...\n');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const done = spawnSync(npm, ['ci', '--no-fund', '--no-audit', '--loglevel=error'], {
    cwd: projectFolder,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) {
    process.stderr.write(
      'npm ci failed; see the lines above. A network connection is needed once.\n',
    );
    process.exit(1);
  }
};

if (process.argv[1] === fileURLToPath(import.meta.url)) ensureInstalled();
