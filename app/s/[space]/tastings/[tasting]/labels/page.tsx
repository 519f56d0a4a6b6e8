import type { Metadata } from "next";
import { environment } from "@/lib/server/environment";
import { judgingPath } from "@/lib/model/tasting/tasting";
import { readPreparation, readTasting } from "../read-tasting";
import { TastingHeading } from "../tasting-heading";
import { BlindLabels } from "./blind-labels";

interface BlindLabelsPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

export async function generateMetadata({ params }: BlindLabelsPageProps): Promise<Metadata> {
  const { space, tasting } = await params;
  await readPreparation(space, tasting);
  return { title: `Labels: ${(await readTasting(space, tasting)).tasting.title}` };
}

export default async function BlindLabelsPage({ params }: BlindLabelsPageProps) {
  const { space, tasting: id } = await params;
  const { tasting, preparation } = await readPreparation(space, id);
  const entries = preparation.flights
    .flatMap((flight) => flight.entries.map((entry) => ({ ...entry, flight: flight.title })))
    .sort((a, b) => a.entryNo - b.entryNo)
    .map(({ entryNo, flightNo, beer, brewer, flight }) => ({
      ...{ entryNo, beer, brewer, flight },
      path: judgingPath(space, id, { flightNo, entryNo }),
    }));
  return (
    <>
      <div className="no-print">
        <TastingHeading home={`/s/${space}`} tasting={tasting} isSteward page="labels" />
      </div>
      <BlindLabels title={tasting.title} entries={entries} origin={environment.appOrigin} />
    </>
  );
}
