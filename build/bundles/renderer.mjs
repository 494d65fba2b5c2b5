import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { licences } from './licences.mjs';
import { folder } from './shared.mjs';
import { spokenLanguages } from './spoken-languages.mjs';

/** Replaced by a fresh value in each answer; see the page files of the shell. */
export const noncePlaceholder = '__PAGE_NONCE__';

const { version } = JSON.parse(readFileSync(folder('package.json'), 'utf8'));

export const config = (outDir) => ({
  configFile: false,
  logLevel: 'warn',
  root: folder('renderer'),
  base: '/',
  publicDir: false,
  plugins: [react(), spokenLanguages(['en', 'de']), licences({ asModule: true })],
  worker: { format: 'es' },
  define: { 'import.meta.env.VITE_VERSION': JSON.stringify(version) },
  html: { cspNonce: noncePlaceholder },
  build: {
    outDir,
    emptyOutDir: true,
    target: 'es2023',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        // The page's policy must run before any schema is made, so it lies in one chunk with the schema library.
        codeSplitting: { groups: [{ name: 'first', test: /page-policy|node_modules[\\/]zod/ }] },
      },
    },
    manifest: true,
    chunkSizeWarningLimit: 1500,
    // A slow machine is no fault of the build.
    rollupOptions: { checks: { pluginTimings: false } },
  },
});
