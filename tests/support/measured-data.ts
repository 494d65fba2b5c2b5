import { existsSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';

const folder = new URL('../../../shared/data/', import.meta.url);

/** Text of a measured file that lies beside the repository, or null with the reason said. */
export function measuredText(file: string): string | null {
  const place = new URL(file, folder);
  if (existsSync(place)) return readFileSync(place, 'utf8');
  console.log(`skipped: the measured data ${file} are not beside the repository`);
  return null;
}

/** Rows of such a file by column name, or null. */
export function measuredRows(file: string): Record<string, string>[] | null {
  const text = measuredText(file);
  if (text === null) return null;
  return Papa.parse<Record<string, string>>(text.trim(), { header: true }).data;
}
