import type { ReactElement, ReactNode } from "react";
import type { ComparedRow } from "@/lib/calc/compare";
import { QUANTITIES, STATIONS, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { ACROSS_QUANTITIES } from "@/lib/model/published-result";
import { STATION_NAMES } from "../station-names";
import { AcrossCell, type AcrossTerm } from "./across-cell";

/** One brewer's batch in the table. */
export interface AcrossColumn {
  readonly key: string;
  readonly name: string;
  readonly heading: ReactNode;
  readonly rowOf: (id: QuantityId) => ComparedRow | null;
}

export interface AcrossTarget {
  readonly column: string;
  readonly id: QuantityId;
  readonly of: AcrossTerm;
}

interface AcrossTableProps {
  readonly columns: readonly AcrossColumn[];
  readonly preferences: Preferences;
  /** Puts a number where its explanation can be opened. */
  readonly explained: (target: AcrossTarget, number: ReactNode) => ReactNode;
}

/**
 * The ledger with a column for each brewer. A wide one scrolls sideways in its own frame, with the quantities standing
 * still; on a phone each quantity lists its brewers below it.
 */
export function AcrossTable(props: AcrossTableProps): ReactElement {
  const { columns } = props;
  const stations = STATIONS.filter((station) => ACROSS_QUANTITIES.some((id) => QUANTITIES[id].station === station));
  return (
    <div role="region" aria-label="Table of brewers, scrolls sideways" tabIndex={0} className="across-frame">
      <table role="table" className="across">
        <caption className="sr-only">Planned, measured and difference for each brewer</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col">
              Quantity
            </th>
            {columns.map(({ key, heading }) => (
              <th role="columnheader" scope="col" key={key}>
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        {stations.map((station) => (
          <tbody role="rowgroup" key={station}>
            <tr role="row" className="across-station">
              <th role="rowheader" scope="rowgroup" colSpan={columns.length + 1}>
                <span>{STATION_NAMES[station]}</span>
              </th>
            </tr>
            {ACROSS_QUANTITIES.filter((id) => QUANTITIES[id].station === station).map((id) => (
              <AcrossRow key={id} id={id} {...props} />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}

function AcrossRow({ id, columns, preferences, explained }: AcrossTableProps & { readonly id: QuantityId }) {
  const { label, dimension } = QUANTITIES[id];
  return (
    <tr role="row">
      <th role="rowheader" scope="row">
        <div className="across-row-head">
          <span>{label}</span>
          <span aria-hidden className="across-terms">
            <span>planned</span>
            <span>measured</span>
            <span>difference</span>
          </span>
        </div>
      </th>
      {columns.map(({ key, name, rowOf }) => (
        <AcrossCell
          key={key}
          name={name}
          row={rowOf(id)}
          dimension={dimension}
          preferences={preferences}
          explained={(of, number) => explained({ column: key, id, of }, number)}
        />
      ))}
    </tr>
  );
}
