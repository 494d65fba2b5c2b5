import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { buildOrExit } from './build.mjs';
import { ensureInstalled, projectFolder } from './setup.mjs';

ensureInstalled();
await buildOrExit(['bench', 'renderer', 'main', 'preload', 'headless', 'serve']);
await import(pathToFileURL(join(projectFolder, 'dist', 'bench', 'bench.mjs')).href);
