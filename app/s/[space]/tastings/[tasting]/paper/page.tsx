import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { findPaperOf } from "@/lib/server/tastings/sheets-paper";
import { readTasting } from "../read-tasting";
import { TastingHeading } from "../tasting-heading";
import { PaperForm } from "./paper-form";
import { PaperList } from "./paper-list";

interface PaperPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export async function generateMetadata({ params }: PaperPageProps): Promise<Metadata> {
  const { space, tasting } = await params;
  return { title: `Paper of ${(await readTasting(space, tasting)).tasting.title}` };
}

const text = (value: string | string[] | undefined): string => (typeof value === "string" ? value : "");

/** Where the steward types in what judges wrote on paper. */
export default async function PaperPage({ params, searchParams }: PaperPageProps) {
  const { space, tasting: id } = await params;
  const { member, tasting, isSteward } = await readTasting(space, id);
  if (!isSteward) notFound();
  const asked = await searchParams;
  const judgeId = text(asked["judge"]);
  const judged = judgeId === "" ? null : await findPaperOf(member, id, judgeId);
  const judges = new Map(tasting.flights.flatMap(({ judges: each }) => each.map(({ userId, name }) => [userId, name])));
  const flight = judged?.flights.find(({ flightNo }) => String(flightNo) === text(asked["flight"]));
  const entry = flight?.entries.find(({ entryNo }) => String(entryNo) === text(asked["entry"]));
  const here = `/s/${space}/tastings/${id}/paper`;
  return (
    <>
      <TastingHeading home={`/s/${space}`} tasting={tasting} isSteward={isSteward} page="paper" />
      <h2 className="mt-6">Enter sheets from paper</h2>
      <p className="max-w-prose">
        What you type counts as the judge’s own sheet, the later of the two where there is one already. It is kept that
        you entered it, and the judge sees so.
      </p>
      <ul aria-label="Judges" className="mt-3 flex flex-wrap gap-x-5">
        {[...judges].map(([userId, name]) => (
          <li key={userId}>
            <Link
              className="target"
              href={`${here}?judge=${userId}`}
              aria-current={userId === judgeId ? "page" : undefined}
            >
              {name}
            </Link>
          </li>
        ))}
      </ul>
      {judged === null ? null : (
        <PaperList here={`${here}?judge=${judgeId}`} name={judges.get(judgeId) ?? ""} judged={judged} />
      )}
      {flight === undefined || (flight.kind === "scored" && entry === undefined) ? null : (
        <PaperForm
          key={`${judgeId} ${String(flight.flightNo)} ${String(entry?.entryNo)}`}
          {...{ space, judgeId, flight }}
          tastingId={id}
          entryNo={entry?.entryNo ?? null}
          name={judges.get(judgeId) ?? ""}
        />
      )}
    </>
  );
}
