import { singleFile } from './shared.mjs';

export const config = (outDir) =>
  singleFile({ entry: 'electron/headless.ts', outDir, file: 'headless.mjs', format: 'es' });
