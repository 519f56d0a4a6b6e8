import Link from "next/link";
import type { ReactElement, ReactNode } from "react";

/**
 * A plain table of records. Sorting is a link, because the order belongs to the address of the page.
 *
 * - `caption` is printed above the table; `captionHidden` keeps it for screen readers where a heading says the same.
 * - The first column names the record and is its row heading.
 * - A column with `sortHref` can be sorted; `sorted` says that it is now.
 */
export interface DataColumn<R> {
  readonly id: string;
  readonly label: string;
  readonly cell: (record: R) => ReactNode;
  readonly isNumber?: boolean;
  /** Holds a button, which says itself what it does. */
  readonly isAction?: boolean;
  readonly sortHref?: string;
  readonly sorted?: "ascending" | "descending";
}

export interface DataTableProps<R> {
  readonly caption: string;
  readonly captionHidden?: boolean;
  readonly columns: readonly DataColumn<R>[];
  readonly records: readonly R[];
  readonly keyOf: (record: R) => string;
}

export function DataTable<R>({ caption, captionHidden, columns, records, keyOf }: DataTableProps<R>): ReactElement {
  return (
    <table role="table" className="data-table">
      <caption className={captionHidden === true ? "sr-only" : "table-caption"}>{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          {columns.map((column) => (
            <th
              key={column.id}
              role="columnheader"
              scope="col"
              className={column.isNumber === true ? "is-number" : undefined}
              aria-sort={column.sorted}
            >
              {column.sortHref === undefined ? column.label : <Link href={column.sortHref}>{column.label}</Link>}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {records.map((record) => (
          <tr role="row" key={keyOf(record)}>
            {columns.map((column, i) => (
              <DataCell key={column.id} column={column} record={record} isFirst={i === 0} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function DataCell<R>(props: {
  readonly column: DataColumn<R>;
  readonly record: R;
  readonly isFirst: boolean;
}): ReactElement {
  const { column, record, isFirst } = props;
  if (isFirst) {
    return (
      <th role="rowheader" scope="row">
        {column.cell(record)}
      </th>
    );
  }
  return (
    <td role="cell" className={column.isNumber === true ? "is-number" : undefined}>
      {column.isAction === true ? null : (
        <span aria-hidden className="narrow-label">
          {column.label}
        </span>
      )}
      {column.cell(record)}
    </td>
  );
}
