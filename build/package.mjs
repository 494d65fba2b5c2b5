import { buildOrExit } from './build.mjs';
import { ensureInstalled, projectFolder } from './setup.mjs';

/*
 * Makes the installers of this system; further arguments go to electron-builder's targets:
 *   npm run package              installers
 *   npm run package -- --dir     the program as a folder
 */
ensureInstalled();
await buildOrExit(['main', 'preload', 'renderer']);
const { build } = await import('electron-builder');
const { packagingConfig } = await import('./packaging/config.mjs');
// The time of the last commit in place of now, so that two builds of one commit are alike.
const { execFileSync } = await import('node:child_process');
process.env.SOURCE_DATE_EPOCH ??= execFileSync('git', ['log', '-1', '--format=%ct'], {
  cwd: projectFolder,
  encoding: 'utf8',
}).trim();
const made = await build({
  projectDir: projectFolder,
  config: packagingConfig,
  dir: process.argv.includes('--dir'),
  publish: 'never',
});
for (const file of made) console.log(file);
