import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const licenceFile = /^(licen[cs]e|copying)([.-].*)?$/i;

/** Folder of the package a bundled module came from, or null for our own files. */
const packageFolder = (moduleId) => {
  const path = moduleId.split('?')[0].replace(/^\0/, '').replaceAll('\\', '/');
  if (!path.includes('/node_modules/')) return null;
  for (let at = dirname(path); at.includes('/node_modules/'); at = dirname(at)) {
    const file = join(at, 'package.json');
    // Nested package.json files that only set the module type have no name.
    if (existsSync(file) && JSON.parse(readFileSync(file, 'utf8')).name !== undefined) return at;
  }
  return null;
};

const licenceOf = (at) => {
  const { name, version, license } = JSON.parse(readFileSync(join(at, 'package.json'), 'utf8'));
  const file = readdirSync(at).find((entry) => licenceFile.test(entry));
  const text = file === undefined ? '' : readFileSync(join(at, file), 'utf8').trim();
  return { name, version, licence: license ?? 'see text', text };
};

/**
 * Writes `licences.json` beside a bundle: every package whose code is in it. With `asModule` the
 * list comes as `licences.js` too, for a page that may load scripts but fetch nothing.
 */
export const licences = ({ asModule = false } = {}) => ({
  name: 'licences-of-bundled-packages',
  generateBundle(_options, bundle) {
    const folders = new Set();
    for (const part of Object.values(bundle)) {
      for (const id of part.type === 'chunk' ? part.moduleIds : []) folders.add(packageFolder(id));
    }
    folders.delete(null);
    const packages = [...folders].map(licenceOf).toSorted((a, b) => (a.name < b.name ? -1 : 1));
    const source = JSON.stringify(packages);
    this.emitFile({ type: 'asset', fileName: 'licences.json', source });
    if (!asModule) return;
    const module = `export const packages = ${source};\n`;
    this.emitFile({ type: 'asset', fileName: 'licences.js', source: module });
  },
});
