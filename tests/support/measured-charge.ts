import { existsSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';

const folder = new URL('../../../shared/data/', import.meta.url);

/** Rows of a measured file that lies beside the repository, or null with the reason said. */
export function measuredRows(file: string): Record<string, string>[] | null {
  const place = new URL(file, folder);
  if (!existsSync(place)) {
    console.log(`skipped: the measured data ${file} are not beside the repository`);
    return null;
  }
  return Papa.parse<Record<string, string>>(readFileSync(place, 'utf8').trim(), { header: true })
    .data;
}
