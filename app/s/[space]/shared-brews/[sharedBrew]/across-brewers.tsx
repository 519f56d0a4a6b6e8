import Link from "next/link";
import { QUANTITIES, STATIONS, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { STATION_NAMES } from "@/lib/ui/station-names";
import { AcrossCell } from "./across-cell";
import { ACROSS_QUANTITIES, rowOf, type ComparedBrew } from "./compared-brew";

interface AcrossBrewersProps {
  readonly home: string;
  readonly brews: readonly ComparedBrew[];
  readonly preferences: Preferences;
}

/**
 * The ledger with a column for each brewer. A wide one scrolls sideways in its own frame, with the quantities standing
 * still; on a phone each quantity lists its brewers below it.
 */
export function AcrossBrewers({ home, brews, preferences }: AcrossBrewersProps) {
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
            {brews.map(({ brew, name }) => (
              <th role="columnheader" scope="col" key={brew.id}>
                <Link href={`${home}/brews/${brew.id}/comparison`} className="target">
                  {name}
                </Link>
              </th>
            ))}
          </tr>
        </thead>
        {stations.map((station) => (
          <tbody role="rowgroup" key={station}>
            <tr role="row" className="across-station">
              <th role="rowheader" scope="rowgroup" colSpan={brews.length + 1}>
                <span>{STATION_NAMES[station]}</span>
              </th>
            </tr>
            {ACROSS_QUANTITIES.filter((id) => QUANTITIES[id].station === station).map((id) => (
              <AcrossRow key={id} id={id} home={home} brews={brews} preferences={preferences} />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}

function AcrossRow({ id, home, brews, preferences }: AcrossBrewersProps & { readonly id: QuantityId }) {
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
      {brews.map((compared) => (
        <AcrossCell
          key={compared.brew.id}
          name={compared.name}
          row={rowOf(compared, id)}
          href={`${home}/brews/${compared.brew.id}/comparison?explain=${id}`}
          dimension={dimension}
          preferences={preferences}
        />
      ))}
    </tr>
  );
}
