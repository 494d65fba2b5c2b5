import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { AboutData, BundledPackage } from '#core/shell/documents.ts';

const packagesSchema = z.array(
  z.object({ name: z.string(), version: z.string(), licence: z.string(), text: z.string() }),
);

/** Packages whose code is in the program, as the build wrote them beside each bundle. */
export const readLicences = async (files: readonly string[]): Promise<BundledPackage[]> => {
  const lists = await Promise.all(
    files.map(async (file) => {
      try {
        return packagesSchema.parse(JSON.parse(await readFile(file, 'utf8')));
      } catch {
        // Without one of the lists the box still tells the versions and the rest.
        return [];
      }
    }),
  );
  const byName = new Map(lists.flat().map((entry) => [`${entry.name}@${entry.version}`, entry]));
  return [...byName.values()].toSorted((one, other) => one.name.localeCompare(other.name));
};

/** @param dist folder of the bundles */
export const aboutData = async (version: string, dist: string): Promise<AboutData> => {
  const versions: Readonly<Record<string, string | undefined>> = process.versions;
  const { electron = 'none', chrome = 'none', node = '' } = versions;
  const files = ['main', 'renderer'].map((bundle) => join(dist, bundle, 'licences.json'));
  return {
    name: 'Cellwain',
    version,
    runtimes: { Electron: electron, Chromium: chrome, 'Node.js': node },
    packages: await readLicences(files),
  };
};
