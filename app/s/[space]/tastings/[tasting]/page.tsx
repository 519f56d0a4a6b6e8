import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import { judgingPath } from "@/lib/model/tasting/tasting";
import { closeTastingAction, revealTastingAction } from "./actions";
import { FlightList } from "./flight-list";
import { MoveForm } from "./move-form";
import { readTasting } from "./read-tasting";
import { RevealedTable } from "./revealed-table";
import { TastingCautions } from "./tasting-cautions";
import { TastingHeading } from "./tasting-heading";

interface TastingPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

const SURE = { sure: "yes" } as const;

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
      {tasting.state === "open" && (isSteward || organises) ? (
        <MoveForm
          title="Close judging"
          button="Close judging"
          pending="Closing…"
          hidden={SURE}
          action={closeTastingAction.bind(null, space, id)}
        >
          Judges write no new sheets from then on; what they wrote without a network, and paper sheets, still come in
          until the reveal. This cannot be taken back.
        </MoveForm>
      ) : null}
      {tasting.state === "closed" && organises ? (
        <MoveForm
          title="Reveal the entries"
          button="Reveal to everybody"
          pending="Revealing…"
          hidden={SURE}
          action={revealTastingAction.bind(null, space, id)}
        >
          Everybody of the club then sees which entry is which beer, and brewers and judges are told. Sheets that are
          not in by now count as missing. It is noted that you did it, and it cannot be taken back.
        </MoveForm>
      ) : null}
      {tasting.state === "closed" && !organises ? (
        <p className="mt-6">An organiser of the club reveals the entries.</p>
      ) : null}
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
