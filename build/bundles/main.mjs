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

const updateFeed = process.env.CELLWAIN_UPDATE_FEED ?? '';

/** Without a feed no code for updates is shipped: what is not there cannot be misused. */
const updatesLeftOut = () => ({
  name: 'updates-left-out',
  enforce: 'pre',
  resolveId: (id) =>
    id.endsWith('/updates/start-updates.ts') ? folder('electron/updates/no-updates.ts') : null,
});

export const config = (outDir) =>
  singleFile({
    entry: 'electron/main.ts',
    outDir,
    file: 'main.js',
    format: 'es',
    external: ['electron'],
    define: { UPDATE_FEED: JSON.stringify(updateFeed) },
    plugins: [licences(), windowIcon(), ...(updateFeed === '' ? [updatesLeftOut()] : [])],
  });
