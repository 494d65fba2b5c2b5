import { theHost } from '../state/document-store.ts';
import { fetchAhead } from '../state/fetch-ahead.ts';
import { showToast } from '../state/toast-store.ts';
import { exportAs } from './export-chart.ts';

/** A table on its way to a file; an empty cell is null. */
export interface CsvTable {
  readonly fields: readonly string[];
  readonly data: readonly (readonly (string | number | null)[])[];
}

const writer = async () => (await import('papaparse')).default;
fetchAhead(writer);

const written = async ({ fields, data }: CsvTable): Promise<string> =>
  (await writer()).unparse({ fields: [...fields], data: [...data] });

export const saveCsv = async (name: string, table: CsvTable): Promise<void> =>
  exportAs('csv', name, await written(table));

/** `said` is what the program answers once the table is in the clipboard. */
export async function copyCsv(table: CsvTable, said: string): Promise<void> {
  const copied = await theHost().copyText(await written(table));
  if (copied.ok) showToast(said);
}
