import Papa from 'papaparse';
import type { Sheet, SheetTable } from './sheet.ts';
import type { SheetPartId } from './sheet-parts.ts';
import { plainSpaces } from './sheet-voice.ts';

/** Every table of the chosen parts that holds figures or words to take along. */
export function sheetTables(sheet: Sheet, parts: readonly SheetPartId[]): SheetTable[] {
  return sheet.parts
    .filter(({ id }) => parts.includes(id))
    .flatMap(({ blocks }) => blocks)
    .filter((block) => block.kind === 'table')
    .filter(({ columns }) => columns.some(({ byHand }) => byHand !== true));
}

/**
 * A table as CSV (RFC 4180): units in the heads, figures with a decimal point and full precision, empty where not known.
 * Columns to be filled in by hand are left out.
 */
export function tableCsv(table: SheetTable): string {
  const kept = table.columns
    .map((column, index) => ({ column, index }))
    .filter(({ column }) => column.byHand !== true);
  return `${Papa.unparse(
    {
      fields: kept.map(({ column }) =>
        plainSpaces(column.unit === undefined ? column.label : `${column.label} [${column.unit}]`),
      ),
      data: table.rows.map((row) =>
        kept.map(({ index }) => {
          const cell = row[index] ?? '';
          return typeof cell === 'string' ? plainSpaces(cell) : (cell.value ?? '');
        }),
      ),
    },
    // A spreadsheet would take words that begin so for a formula and work it out.
    { newline: '\r\n', escapeFormulae: true },
  )}\r\n`;
}
