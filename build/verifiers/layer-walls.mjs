import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { projectFolder } from '../setup.mjs';

/**
 * The walls once more, read from the source text itself: the type check and the lint rule could both
 * be loosened by an edit to their configuration, and this would still say no.
 */
const forbidden = {
  'shared-core': [
    /^node:/,
    /^electron$/,
    /^react/,
    /^#renderer\//,
    /^#electron\//,
    /(^|\/)(renderer|electron)\//,
  ],
  renderer: [/^node:/, /^electron$/, /^#electron\//, /(^|\/)electron\//],
  electron: [/^react/, /^#renderer\//, /(^|\/)renderer\//],
};

const importPattern = /(?:\bfrom\s*|\bimport\s*\(?\s*|\brequire\s*\(\s*)(['"])([^'"\n]+)\1/g;

const sources = (folder) =>
  !existsSync(folder)
    ? []
    : readdirSync(folder, { recursive: true, encoding: 'utf8' })
        .filter((name) => /\.(ts|tsx|mts|mjs|js)$/.test(name))
        .map((name) => join(folder, name));

/** Every import that crosses a wall, as a line to print. */
export const crossings = (layer, text, file) =>
  [...text.matchAll(importPattern)]
    .map((match) => match[2])
    .filter((specifier) => forbidden[layer].some((pattern) => pattern.test(specifier)))
    .map((specifier) => `${file}: ${layer} must not import ${specifier}`);

export const checkLayerWalls = () =>
  Object.keys(forbidden).map((layer) => {
    const files = sources(join(projectFolder, layer));
    const found = files.flatMap((file) =>
      crossings(layer, readFileSync(file, 'utf8'), relative(projectFolder, file)),
    );
    return { layer, files: files.length, crossings: found };
  });

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const results = checkLayerWalls();
  for (const { layer, files, crossings: found } of results) {
    console.log(`${layer}: ${files} files, ${found.length} forbidden imports`);
    for (const line of found) console.log(`  ${line}`);
  }
  if (results.some((result) => result.crossings.length > 0)) process.exitCode = 1;
}
