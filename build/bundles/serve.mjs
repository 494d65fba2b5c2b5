import { singleFile } from './shared.mjs';

export const config = (outDir) =>
  singleFile({ entry: 'electron/serve/serve.ts', outDir, file: 'serve.mjs', format: 'es' });
