import { readFileSync } from 'node:fs';
import { licences } from './licences.mjs';
import { folder, singleFile } from './shared.mjs';

/** Linux takes the icon of a window from a file of the program. */
const windowIcon = () => ({
  name: 'icon-of-the-window',
  generateBundle() {
    const source = readFileSync(folder('build/icons/linux/256x256.png'));
    this.emitFile({ type: 'asset', fileName: 'icon.png', source });
  },
});

export const config = (outDir) =>
  singleFile({
    entry: 'electron/main.ts',
    outDir,
    file: 'main.js',
    format: 'es',
    external: ['electron'],
    plugins: [licences(), windowIcon()],
  });
