import type { CsvTable } from '../../charts/csv.ts';
import type { Coordination, CoordinationLabels } from '#core/wiring/index.ts';

/** The rows of the table twin as CSV: point and decimal point, seconds and amperes, empty where it never opens. */
export function coordinationCsv({ rows }: Coordination, labels: CoordinationLabels): CsvTable {
  return {
    fields: ['at', 'currentA', 'fuseEarliestS', 'fuseLatestS', 'wireRatedS', 'wireHarmedS'],
    data: rows.map((row) => [
      row.label in labels.marks ? labels.marks[row.label as keyof typeof labels.marks] : row.label,
      row.currentA,
      row.fuseEarliestS,
      row.fuseLatestS,
      row.wireRatedS,
      row.wireHarmedS,
    ]),
  };
}
