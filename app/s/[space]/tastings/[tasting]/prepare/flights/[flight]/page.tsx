import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { FLIGHT_KIND_WORDS } from "@/lib/model/tasting/tasting";
import { listPeople } from "@/lib/server/spaces/reads";
import { listPourable } from "@/lib/server/tastings/candidates";
import { readPreparation } from "../../../read-tasting";
import { EntryTable } from "./entry-table";
import { FlightForms } from "./flight-forms";
import { OrdersSection } from "./orders-section";

interface FlightPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string; readonly flight: string }>;
}

async function readFlight({ params }: FlightPageProps) {
  const { space, tasting: id, flight: no } = await params;
  const read = await readPreparation(space, id);
  const flight = read.preparation.flights.find(({ flightNo }) => String(flightNo) === no) ?? notFound();
  return { ...read, flight, home: `/s/${space}/tastings/${id}` };
}

export async function generateMetadata(props: FlightPageProps): Promise<Metadata> {
  const { flight, tasting } = await readFlight(props);
  return { title: `${flight.title}: ${tasting.title}` };
}

export default async function FlightPage(props: FlightPageProps) {
  const { member, tasting, preparation, flight, home } = await readFlight(props);
  const isDraft = tasting.state === "draft";
  const [people, pourable] = isDraft ? await Promise.all([listPeople(member), listPourable(member)]) : [[], []];
  const entered = new Set(preparation.flights.flatMap(({ entries }) => entries.flatMap(({ brewId }) => brewId ?? [])));
  return (
    <>
      <p className="no-print">
        <Link className="target" href={`${home}/prepare`}>
          Preparation of {tasting.title}
        </Link>
      </p>
      <h1>{flight.title}</h1>
      <p className="text-muted">{FLIGHT_KIND_WORDS[flight.kind]}. Only the steward sees this page.</p>
      <EntryTable home={`${home}/prepare/entries`} flight={flight} />
      <OrdersSection flight={flight} />
      {isDraft ? (
        <FlightForms
          at={{ space: member.spaceSlug, id: tasting.id }}
          lockVersion={preparation.lockVersion}
          flight={flight}
          people={people.filter(({ userId }) => userId !== member.userId)}
          brews={pourable.filter(({ id }) => !entered.has(id))}
          sharedBrewId={tasting.sharedBrew?.id ?? null}
        />
      ) : null}
    </>
  );
}
