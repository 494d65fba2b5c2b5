import type { ReactNode } from 'react';
import './table.css';

export interface Column {
  readonly id: string;
  /** Empty over a column of buttons. */
  readonly label: ReactNode;
  readonly unit?: string;
  readonly isNumber?: boolean;
}

export interface Row {
  readonly id: string;
  /** By column id; the first column is the head of the row. */
  readonly cells: Readonly<Record<string, ReactNode>>;
}

interface DataTableProps {
  readonly caption: string;
  readonly hideCaption?: boolean;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** A plain table: units in the heads, figures in line, every row headed. */
export const DataTable = ({ caption, hideCaption = false, columns, rows }: DataTableProps) => (
  <div className="table-box" tabIndex={0} role="group" aria-label={caption}>
    <table className="table">
      <caption className={hideCaption ? 'only-spoken' : ''}>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) =>
            column.label === '' ? (
              <td key={column.id} />
            ) : (
              <th key={column.id} scope="col" className={column.isNumber === true ? 'number' : ''}>
                {column.label}
                {column.unit === undefined ? null : <span className="faint"> {column.unit}</span>}
              </th>
            ),
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            {columns.map((column, index) =>
              index === 0 ? (
                <th key={column.id} scope="row">
                  {row.cells[column.id]}
                </th>
              ) : (
                <td key={column.id} className={column.isNumber === true ? 'number' : ''}>
                  {row.cells[column.id]}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
