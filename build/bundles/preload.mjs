import { singleFile } from './shared.mjs';

/** A sandboxed preload script must be one CommonJS file. */
export const config = (outDir) =>
  singleFile({
    entry: 'electron/preload.ts',
    outDir,
    file: 'preload.cjs',
    format: 'cjs',
    external: ['electron'],
  });
