import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { buildBundles } from './build.mjs';
import { ensureInstalled, projectFolder } from './setup.mjs';

ensureInstalled();
await buildBundles(['headless']);
await import(pathToFileURL(join(projectFolder, 'dist', 'headless', 'headless.mjs')).href);
