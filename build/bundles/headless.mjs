import { singleFile } from './shared.mjs';

export const config = (outDir) =>
  singleFile({
    entry: 'electron/headless.ts',
    outDir,
    file: 'headless.mjs',
    format: 'es',
    // A browser inside a package, asked for only where the system has none.
    external: ['@sparticuz/chromium'],
  });
