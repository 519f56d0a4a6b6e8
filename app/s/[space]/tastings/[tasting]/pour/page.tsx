import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Caution } from "@/lib/ui/caution";
import { findPourList } from "@/lib/server/tastings/pour-list";
import { readTasting } from "../read-tasting";
import { TastingHeading } from "../tasting-heading";
import { PourTable } from "./pour-table";

interface PourPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

async function readPour({ params }: PourPageProps) {
  const { space, tasting: id } = await params;
  const read = await readTasting(space, id);
  return { ...read, space, flights: (await findPourList(read.member, id)) ?? notFound() };
}

export async function generateMetadata(props: PourPageProps): Promise<Metadata> {
  return { title: `Pour list: ${(await readPour(props)).tasting.title}` };
}

export default async function PourPage(props: PourPageProps) {
  const { tasting, isSteward, organises, flights, space } = await readPour(props);
  return (
    <>
      <TastingHeading home={`/s/${space}`} tasting={tasting} {...{ isSteward, organises }} page="pour" />
      <div className="mt-4">
        <Caution>
          Pour small glasses of one size, 40 to 60 mL, and put water and something to spit into on every table. Wash
          hands and change the cloth between beers that differ in allergens.
        </Caution>
      </div>
      <p className="mt-4">
        Pour where judges do not see bottles or taps. Set the glasses down in this order, from the judge’s left to
        right; no word about what is in them.
      </p>
      {flights.map((flight) => (
        <PourTable key={flight.flightNo} flight={flight} />
      ))}
    </>
  );
}
