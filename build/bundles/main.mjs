import { licences } from './licences.mjs';
import { singleFile } from './shared.mjs';

export const config = (outDir) =>
  singleFile({
    entry: 'electron/main.ts',
    outDir,
    file: 'main.js',
    format: 'es',
    external: ['electron'],
    plugins: [licences()],
  });
