import type { Metadata } from "next";
import Link from "next/link";
import { judgingPath } from "@/lib/model/tasting/tasting";
import { findSheetProgress, type SheetProgress } from "@/lib/server/tastings/sheets-progress";
import { FlightList } from "./flight-list";
import { readTasting } from "./read-tasting";
import { RevealedTable } from "./revealed-table";
import { TastingCautions } from "./tasting-cautions";
import { TastingHeading } from "./tasting-heading";
import { TastingMoves } from "./tasting-moves";

interface TastingPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

export async function generateMetadata({ params }: TastingPageProps): Promise<Metadata> {
  const { space, tasting } = await params;
  return { title: (await readTasting(space, tasting)).tasting.title };
}

export default async function TastingPage({ params }: TastingPageProps) {
  const { space, tasting: id } = await params;
  const { member, tasting, isSteward, organises } = await readTasting(space, id);
  const home = `/s/${space}`;
  const missing = missingSheets((await findSheetProgress(member, id)) ?? []);
  return (
    <>
      <TastingHeading home={home} {...{ tasting, isSteward, organises }} page="tasting" />
      {tasting.note === "" ? null : <p className="mt-4">{tasting.note}</p>}
      <TastingCautions />
      <FlightList
        home={`${home}/tastings/${id}`}
        judging={judgingPath(space, id)}
        tasting={tasting}
        ownId={member.userId}
      />
      <TastingMoves at={{ space, id }} state={tasting.state} {...{ isSteward, organises, missing }} />
      <RevealedTable home={home} tasting={tasting} />
      {tasting.state === "revealed" ? (
        <p className="mt-4">
          <Link className="target" href={`${home}/tastings/${id}/results`}>
            Results
          </Link>
        </p>
      ) : null}
    </>
  );
}

/** So many sheets are not in; nobody but the steward and organisers is told of any. */
function missingSheets(progress: readonly SheetProgress[]): number {
  return progress.reduce((sum, { toCome, handedIn }) => sum + toCome - handedIn, 0);
}
