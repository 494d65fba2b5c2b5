import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { buildOrExit } from './build.mjs';
import { ensureInstalled, projectFolder } from './setup.mjs';

ensureInstalled();
await buildOrExit(['headless']);
await import(pathToFileURL(join(projectFolder, 'dist', 'headless', 'headless.mjs')).href);
