import type { Metadata } from "next";
import { environment } from "@/lib/server/environment";
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
    .flatMap(({ entries: all, title }) =>
      all.map(({ entryNo, beer, brewer }) => ({ entryNo, beer, brewer, flight: title })),
    )
    .sort((a, b) => a.entryNo - b.entryNo);
  return (
    <>
      <div className="no-print">
        <TastingHeading home={`/s/${space}`} tasting={tasting} isSteward page="labels" />
      </div>
      <BlindLabels
        title={tasting.title}
        entries={entries}
        origin={environment.appOrigin}
        path={`/s/${space}/tastings/${id}/judge`}
      />
    </>
  );
}
