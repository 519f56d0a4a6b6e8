import type { ReactElement } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { BalanceLine } from "./balance-line";
import { LedgerValue } from "./ledger-value";
import type { LedgerColumn, LedgerGroup, LedgerRow } from "./ledger-rows";
import { STATION_NAMES } from "./station-names";

/**
 * The ledger: one table that every screen shares. Stations and their quantities go down, the caller's columns across.
 *
 * - `caption` says whose ledger this is; it is read first.
 * - `columns` one or more; `groups` by station, from `ledgerGroups` or made by hand.
 * - `onExplain(rowId, columnId)` makes each value a button that opens its explanation (client screens); a cell's `href`
 *   makes it a link (server screens).
 *
 * On a phone the columns wrap below the label. The roles are written out because changing `display` takes a table's
 * own away in some browsers.
 */
export interface LedgerTableProps {
  readonly caption: string;
  readonly columns: readonly LedgerColumn[];
  readonly groups: readonly LedgerGroup[];
  readonly preferences: Preferences;
  readonly onExplain?: ((rowId: string, columnId: string) => void) | undefined;
}

export function LedgerTable(props: LedgerTableProps): ReactElement {
  const { caption, columns, groups } = props;
  return (
    <table role="table" className="ledger" data-columns={columns.length > 3 ? "many" : columns.length}>
      <caption className="sr-only">{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            Quantity
          </th>
          {columns.map((column) => (
            <th role="columnheader" scope="col" key={column.id}>
              {column.label}
            </th>
          ))}
        </tr>
      </thead>
      {groups.map((group) => (
        <StationRows key={group.station} {...props} group={group} />
      ))}
    </table>
  );
}

function StationRows({ group, ...props }: LedgerTableProps & { readonly group: LedgerGroup }): ReactElement {
  const width = props.columns.length + 1;
  const balance =
    group.balance === undefined ? (
      group.balanceContent
    ) : (
      <BalanceLine balance={group.balance} preferences={props.preferences} />
    );
  return (
    <tbody role="rowgroup">
      <tr role="row" className="ledger-station">
        <th role="rowheader" scope="rowgroup" colSpan={width}>
          {STATION_NAMES[group.station]}
        </th>
      </tr>
      {group.children === undefined ? null : <WholeWidth width={width}>{group.children}</WholeWidth>}
      {group.rows.map((row) => (
        <QuantityRow key={row.id} {...props} row={row} />
      ))}
      {balance === undefined ? null : (
        <tr role="row" className="ledger-balance">
          <td role="cell" colSpan={width}>
            {balance}
          </td>
        </tr>
      )}
    </tbody>
  );
}

function QuantityRow({ row, ...props }: LedgerTableProps & { readonly row: LedgerRow }): ReactElement {
  return (
    <>
      <tr role="row">
        <th role="rowheader" scope="row">
          {row.label}
          {row.note === undefined ? null : <span className="ledger-note">{row.note}</span>}
        </th>
        {props.columns.map((column, i) => (
          <td role="cell" className="ledger-value" key={column.id}>
            <span aria-hidden className="ledger-cell-label">
              {column.label}
            </span>
            <LedgerValue
              row={row}
              column={column}
              cell={row.cells[i] ?? { value: null }}
              preferences={props.preferences}
              onExplain={props.onExplain}
            />
          </td>
        ))}
      </tr>
      {row.children === undefined ? null : <WholeWidth width={props.columns.length + 1}>{row.children}</WholeWidth>}
    </>
  );
}

function WholeWidth({
  width,
  children,
}: {
  readonly width: number;
  readonly children: LedgerRow["children"];
}): ReactElement {
  return (
    <tr role="row" className="ledger-children">
      <td role="cell" colSpan={width}>
        {children}
      </td>
    </tr>
  );
}
