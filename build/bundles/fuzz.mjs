import { singleFile } from './shared.mjs';

export const config = (outDir) =>
  singleFile({ entry: 'tests/fuzz/worker.ts', outDir, file: 'fuzz.mjs', format: 'es' });
