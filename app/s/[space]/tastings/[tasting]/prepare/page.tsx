import type { Metadata } from "next";
import { Notice } from "@/lib/ui/notice";
import { readPreparation, readTasting } from "../read-tasting";
import { TastingHeading } from "../tasting-heading";
import { DraftForms } from "./draft-forms";
import { PreparedFlights } from "./prepared-flights";

interface PreparePageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

export async function generateMetadata({ params }: PreparePageProps): Promise<Metadata> {
  const { space, tasting } = await params;
  await readPreparation(space, tasting);
  return { title: `Preparation: ${(await readTasting(space, tasting)).tasting.title}` };
}

export default async function PreparePage({ params }: PreparePageProps) {
  const { space, tasting: id } = await params;
  const { tasting, preparation } = await readPreparation(space, id);
  const { lockVersion, flights } = preparation;
  const home = `/s/${space}`;
  return (
    <>
      <TastingHeading home={home} tasting={tasting} isSteward page="prepare" />
      <div className="mt-4">
        <Notice>
          Only you see this page. What stands here tells which beer is which: leave it open on no screen that a judge
          can read.
        </Notice>
      </div>
      <PreparedFlights home={`${home}/tastings/${id}/prepare`} flights={flights} isDraft={tasting.state === "draft"} />
      {tasting.state === "draft" ? <DraftForms at={{ space, id }} tasting={tasting} lockVersion={lockVersion} /> : null}
    </>
  );
}
