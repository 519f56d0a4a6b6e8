import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import { judgingPath } from "@/lib/model/tasting/tasting";
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
  const { member, tasting, isSteward } = await readTasting(space, id);
  const home = `/s/${space}`;
  const organises = roleMay(member.role, "organise");
  return (
    <>
      <TastingHeading home={home} tasting={tasting} isSteward={isSteward} page="tasting" />
      {tasting.note === "" ? null : <p className="mt-4">{tasting.note}</p>}
      <TastingCautions />
      <FlightList
        home={`${home}/tastings/${id}`}
        judging={judgingPath(space, id)}
        tasting={tasting}
        ownId={member.userId}
      />
      <TastingMoves at={{ space, id }} state={tasting.state} isSteward={isSteward} organises={organises} />
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
