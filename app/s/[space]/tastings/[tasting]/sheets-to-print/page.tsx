import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { isDifferenceTest } from "@/lib/model/tasting/tasting";
import { findPourList } from "@/lib/server/tastings/pour-list";
import { readTasting } from "../read-tasting";
import { TastingHeading } from "../tasting-heading";
import { BlankSheet } from "./blank-sheet";
import { BlankTest } from "./blank-test";

interface PaperPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

async function readPaper({ params }: PaperPageProps) {
  const { space, tasting: id } = await params;
  const read = await readTasting(space, id);
  if (!read.isSteward) notFound();
  return { ...read, space, flights: (await findPourList(read.member, id)) ?? notFound() };
}

export async function generateMetadata(props: PaperPageProps): Promise<Metadata> {
  return { title: `Sheets to print: ${(await readPaper(props)).tasting.title}` };
}

export default async function PaperPage(props: PaperPageProps) {
  const { tasting, flights, space } = await readPaper(props);
  return (
    <>
      <div className="no-print">
        <TastingHeading home={`/s/${space}`} tasting={tasting} isSteward page="sheets-to-print" />
        <p className="mt-4 max-w-2xl">
          For judges without a phone: print this page; each judge gets the own pages, one sheet a beer in the order of
          tasting. Paper is entered afterwards, until the reveal.
        </p>
      </div>
      {flights.flatMap((flight) =>
        flight.judges.flatMap(({ judge, codes }) => {
          const at = { tasting: tasting.title, flight: flight.title, judge: judge.name };
          return isDifferenceTest(flight.kind)
            ? [
                <BlankTest
                  key={`${String(flight.flightNo)}-${judge.userId}`}
                  {...at}
                  kind={flight.kind}
                  glasses={codes}
                />,
              ]
            : codes.map((entryNo, place) => (
                <BlankSheet
                  key={`${String(flight.flightNo)}-${judge.userId}-${String(entryNo)}`}
                  {...at}
                  entryNo={entryNo}
                  place={place + 1}
                  places={codes.length}
                />
              ));
        }),
      )}
    </>
  );
}
