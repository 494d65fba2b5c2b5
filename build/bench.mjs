import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { buildOrExit } from './build.mjs';
import { ensureInstalled, projectFolder } from './setup.mjs';

ensureInstalled();
await buildOrExit(['bench']);
await import(pathToFileURL(join(projectFolder, 'dist', 'bench', 'bench.mjs')).href);
