import type { Metadata } from "next";
import { choiceStanding, sheetStanding, type JudgeSheet } from "@/lib/model/tasting/judge-sheet";
import { findJudgeSheet } from "@/lib/server/tastings/sheets-read";
import { readTasting } from "../read-tasting";
import { TastingHeading } from "../tasting-heading";

interface JudgePageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

export async function generateMetadata({ params }: JudgePageProps): Promise<Metadata> {
  const { space, tasting } = await params;
  return { title: `Judge ${(await readTasting(space, tasting)).tasting.title}` };
}

/** What a judge has to taste, and the way to the sheets, which are a page that works without a network. */
export default async function JudgePage({ params }: JudgePageProps) {
  const { space, tasting: id } = await params;
  const { member, tasting, isSteward } = await readTasting(space, id);
  const sheet = await findJudgeSheet(member, id);
  return (
    <>
      <TastingHeading home={`/s/${space}`} tasting={tasting} isSteward={isSteward} page="tasting" />
      <h2 className="mt-6">Your glasses</h2>
      {sheet === null ? <p>You do not judge at this tasting.</p> : <Glasses sheet={sheet} />}
    </>
  );
}

function Glasses({ sheet }: { readonly sheet: JudgeSheet }) {
  if (sheet.flights.length === 0) return <p>Nothing is served yet: the steward is still preparing.</p>;
  return (
    <>
      <ul className="list-ruled mt-2">
        {sheet.flights.map((flight) => (
          <li key={flight.flightNo} className="py-2">
            <strong>{flight.title}</strong>: {standingWords(sheet, flight)}
          </li>
        ))}
      </ul>
      <p className="mt-4">
        <a className="button" href={`/judging/${sheet.space.slug}/${sheet.tasting.id}`}>
          Open your sheets
        </a>
      </p>
      <p className="mt-2 max-w-prose text-muted">
        Open them once where there is a network; from then on they work without one, and what you write is sent when
        there is one again.
      </p>
    </>
  );
}

function standingWords({ entries }: JudgeSheet, flight: JudgeSheet["flights"][number]): string {
  if (flight.kind !== "scored") {
    return choiceStanding(entries, flight.flightNo).isHandedIn ? "answered and handed in" : "not handed in";
  }
  const done = flight.entries.filter(({ entryNo }) => sheetStanding(entries, entryNo).isHandedIn).length;
  return `${String(done)} of ${String(flight.entries.length)} sheets handed in`;
}
