import type { SheetCell, SheetColumn, SheetTable } from '../sheet.ts';
import { element, type MarkupNode } from './node.ts';

/** A table whose head repeats on every page and whose rows are never torn. */
export function tableMarkup(table: SheetTable): MarkupNode {
  const { caption, columns, rows, foot, roomy } = table;
  return element('table', roomy === true ? 'table roomy' : 'table', [
    element('caption', '', [caption]),
    element('thead', '', [element('tr', '', columns.map(headMarkup))]),
    element(
      'tbody',
      '',
      rows.map((row) => rowMarkup(row, columns)),
    ),
    foot === undefined ? null : element('tfoot', '', [rowMarkup(foot, columns)]),
  ]);
}

/** Head of a column. One that names nothing, over boxes to tick, heads nothing either. */
function headMarkup(column: SheetColumn): MarkupNode {
  if (column.label === '') return element('td', classOf(column), []);
  return element(
    'th',
    classOf(column),
    [column.label, column.unit === undefined ? null : element('span', 'unit', [` ${column.unit}`])],
    { scope: 'col' },
  );
}

function rowMarkup(row: readonly SheetCell[], columns: readonly SheetColumn[]): MarkupNode {
  return element(
    'tr',
    '',
    columns.map((column, index) => {
      const cell = row[index] ?? '';
      const text = typeof cell === 'string' ? cell : cell.text;
      return index === 0 && text !== ''
        ? element('th', classOf(column), [text], { scope: 'row' })
        : element('td', classOf(column), [text]);
    }),
  );
}

function classOf({ align, byHand, tight }: SheetColumn): string {
  return [
    align === 'end' ? 'number' : '',
    byHand === true ? 'by-hand' : '',
    tight === true ? 'tight' : '',
  ]
    .filter((name) => name !== '')
    .join(' ');
}
