import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { checkAgainst, nearestStyles, styleNamed } from "@/lib/model/tasting/prepare-figures";
import { ExplainedCall } from "@/lib/ui/explained-call";
import { readPreparation } from "../../../read-tasting";
import { EntryForms } from "./entry-forms";
import { FiguresTable } from "./figures-table";
import { NearestTable } from "./nearest-table";

interface EntryPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string; readonly entry: string }>;
}

const NEAREST = 6;

async function readEntry({ params }: EntryPageProps) {
  const { space, tasting: id, entry: no } = await params;
  const read = await readPreparation(space, id);
  const entries = read.preparation.flights.flatMap((flight) => flight.entries);
  const entry = entries.find(({ entryNo }) => String(entryNo) === no) ?? notFound();
  return { ...read, entry, at: { space, id }, home: `/s/${space}/tastings/${id}/prepare` };
}

export async function generateMetadata(props: EntryPageProps): Promise<Metadata> {
  const { entry, tasting } = await readEntry(props);
  return { title: `Entry ${String(entry.entryNo)}: ${tasting.title}` };
}

export default async function EntryPage(props: EntryPageProps) {
  const { member, tasting, preparation, entry, at, home } = await readEntry(props);
  const { entryNo, flightNo, styleCode, beer, brewer, figures } = entry;
  const flight = preparation.flights.find((each) => each.flightNo === flightNo);
  const style = styleNamed(styleCode);
  const check = style === null ? null : checkAgainst(figures, style);
  const nearest = nearestStyles(figures, NEAREST);
  const [first] = nearest;
  return (
    <>
      <p className="no-print">
        <Link className="target" href={`${home}/flights/${String(flightNo)}`}>
          {flight?.title}
        </Link>
      </p>
      <h1>Entry {entryNo}</h1>
      <p className="text-muted">
        {beer}
        {brewer === "" ? null : <>, {brewer}</>}. Only the steward sees this page.
      </p>
      <FiguresTable figures={figures} check={check} preferences={member.preferences} />
      <NearestTable nearest={nearest} />
      {first === undefined ? null : (
        <ExplainedCall
          id="judging/styleDistance"
          args={[first.figures.map(({ value, sd, span }) => ({ value, sd, ...span }))]}
        />
      )}
      {tasting.state === "draft" ? (
        <EntryForms at={at} entry={entry} preparation={preparation} nearest={nearest.map(({ code }) => code)} />
      ) : null}
    </>
  );
}
