import Link from "next/link";
import { FLIGHT_KIND_WORDS, type Flight, type PanelPerson, type Tasting } from "@/lib/model/tasting/tasting";

interface FlightListProps {
  /** Of the tasting. */
  readonly home: string;
  /** Where its judges write. */
  readonly judging: string;
  readonly tasting: Tasting;
  readonly ownId: string;
}

/** What is tasted together, who judges and who pours; and the reader's own part. */
export function FlightList({ home, judging, tasting, ownId }: FlightListProps) {
  const { flights, state } = tasting;
  const isIn = (people: readonly PanelPerson[]): boolean => people.some(({ userId }) => userId === ownId);
  const judges = flights.some((flight) => isIn(flight.judges));
  const pours = flights.some((flight) => isIn(flight.pourers));
  return (
    <section aria-labelledby="flights" className="mt-6">
      <h2 id="flights" className="mb-2">
        Flights
      </h2>
      {flights.length === 0 ? <p className="text-muted">None yet: the steward is still preparing.</p> : null}
      <ul className="list-ruled">
        {flights.map((flight) => (
          <li key={flight.flightNo} className="py-3">
            <FlightLines flight={flight} />
          </li>
        ))}
      </ul>
      <p className="no-print mt-3 flex flex-wrap gap-x-6">
        {judges && state !== "draft" && state !== "revealed" ? (
          // A page of its own, outside of the site's navigation: it is kept on the device and works without a network.
          <a className="button" href={judging}>
            Judge
          </a>
        ) : null}
        {pours && state === "open" ? (
          <Link className="target" href={`${home}/pour`}>
            Pour list
          </Link>
        ) : null}
      </p>
    </section>
  );
}

function FlightLines({ flight }: { readonly flight: Flight }) {
  const { title, kind, judges, pourers } = flight;
  return (
    <>
      <h3>{title}</h3>
      <p>
        {FLIGHT_KIND_WORDS[kind]}; judges: {named(judges)}
        {pourers.length === 0 ? null : <>; poured by {named(pourers)}</>}.
      </p>
    </>
  );
}

function named(people: readonly PanelPerson[]): string {
  return people.length === 0 ? "nobody yet" : people.map(({ name }) => name).join(", ");
}
