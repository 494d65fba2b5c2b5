import { singleFile } from './shared.mjs';

export const config = (outDir) =>
  singleFile({ entry: 'tests/bench/main.ts', outDir, file: 'bench.mjs', format: 'es' });
