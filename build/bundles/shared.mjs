import { builtinModules } from 'node:module';
import { fileURLToPath } from 'node:url';

export const folder = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

const nodeModules = [...builtinModules, ...builtinModules.map((name) => `node:${name}`)];

/**
 * One file that holds everything it needs, so that it runs from any folder and an installed
 * program carries no node_modules. `external` stays outside: Electron and Node.
 */
export const singleFile = ({
  entry,
  outDir,
  file,
  format,
  external = [],
  plugins = [],
  define = {},
}) => ({
  configFile: false,
  logLevel: 'warn',
  root: folder('.'),
  publicDir: false,
  plugins,
  define,
  resolve: { conditions: ['node', 'import', 'default'] },
  ssr: { noExternal: true, target: 'node' },
  build: {
    ssr: folder(entry),
    outDir,
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    sourcemap: false,
    rollupOptions: {
      external: [...nodeModules, ...external],
      output: { format, entryFileNames: file, codeSplitting: false },
    },
  },
});
