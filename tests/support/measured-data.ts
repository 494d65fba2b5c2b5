import { existsSync, readFileSync } from 'node:fs';

const folder = new URL('../../../shared/data/', import.meta.url);

/** Text of a measured file that lies beside the repository, or null with the reason said. */
export function measuredText(file: string): string | null {
  const place = new URL(file, folder);
  if (existsSync(place)) return readFileSync(place, 'utf8');
  console.log(`skipped: the measured data ${file} are not beside the repository`);
  return null;
}
