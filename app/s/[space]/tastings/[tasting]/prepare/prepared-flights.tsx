import Link from "next/link";
import { FLIGHT_KIND_WORDS } from "@/lib/model/tasting/tasting";
import type { PreparedFlight } from "@/lib/server/tastings/preparation";

interface PreparedFlightsProps {
  /** Of the preparation. */
  readonly home: string;
  readonly flights: readonly PreparedFlight[];
  /** Whether it can still be opened: nothing is missing of what was. */
  readonly isDraft: boolean;
}

/** The flights with what is still missing, for the steward. */
export function PreparedFlights({ home, flights, isDraft }: PreparedFlightsProps) {
  return (
    <section aria-labelledby="flights" className="mt-6">
      <h2 id="flights" className="mb-2">
        Flights
      </h2>
      {flights.length === 0 ? <p className="text-muted">None yet; add one below.</p> : null}
      <ul className="list-ruled">
        {flights.map(({ flightNo, title, kind, entries, judges, pourers, obstacles }) => (
          <li key={flightNo} className="py-3">
            <h3>
              <Link className="target" href={`${home}/flights/${String(flightNo)}`}>
                {title}
              </Link>
            </h3>
            <p>
              {FLIGHT_KIND_WORDS[kind]}: {counted(entries.length, "entry", "entries")},{" "}
              {counted(judges.length, "judge", "judges")}, {counted(pourers.length, "pourer", "pourers")}.
            </p>
            {isDraft && obstacles.length === 0 ? <p>Ready to be opened.</p> : null}
            {(isDraft ? obstacles : []).map((obstacle) => (
              <p key={obstacle} className="text-muted">
                Still missing: {obstacle}
              </p>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}

const counted = (many: number, one: string, more: string): string => `${String(many)} ${many === 1 ? one : more}`;
