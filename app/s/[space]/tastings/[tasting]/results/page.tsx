import type { Metadata } from "next";
import Link from "next/link";
import { tastingResults } from "@/lib/model/tasting/results";
import { findTastingFacts } from "@/lib/server/tastings/results-read";
import { findSheetProgress } from "@/lib/server/tastings/sheets-progress";
import { remindJudgesAction } from "../actions";
import { readTasting } from "../read-tasting";
import { TastingHeading } from "../tasting-heading";
import { DifferenceSection } from "./difference-section";
import { FollowedSection } from "./followed-section";
import { ProgressTable } from "./progress-table";
import { RemindForm } from "./remind-form";
import { ScoredSection } from "./scored-section";

interface ResultsPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

export async function generateMetadata({ params }: ResultsPageProps): Promise<Metadata> {
  const { space, tasting } = await params;
  return { title: `Results of ${(await readTasting(space, tasting)).tasting.title}` };
}

export default async function ResultsPage({ params }: ResultsPageProps) {
  const { space, tasting: id } = await params;
  const { member, tasting, isSteward, organises } = await readTasting(space, id);
  const facts = await findTastingFacts(member, id);
  const own = `/s/${space}/tastings/${id}`;
  const heading = <TastingHeading home={`/s/${space}`} {...{ tasting, isSteward, organises }} page="results" />;
  if (facts === null) {
    const progress = await findSheetProgress(member, id);
    return (
      <>
        {heading}
        <p className="mt-4">There are results once the entries have been revealed; nobody sees points before that.</p>
        {progress === null ? null : (
          <ProgressTable
            home={own}
            {...{ tasting, isSteward, progress }}
            reminder={<RemindForm remindedAt={tasting.remindedAt} action={remindJudgesAction.bind(null, space, id)} />}
          />
        )}
      </>
    );
  }
  const { scored, differences, followed } = tastingResults(facts);
  const shared = { home: `/s/${space}`, ownId: member.userId, preferences: member.preferences };
  return (
    <>
      {heading}
      <p className="no-print mt-4 flex flex-wrap gap-x-6">
        <Link className="target" href={`${own}/feedback`}>
          Feedback for the brewers
        </Link>
        <a className="target" href={`${own}/results/export?format=csv`} download>
          All sheets as CSV
        </a>
        <a className="target" href={`${own}/results/export?format=json`} download>
          All sheets as JSON
        </a>
      </p>
      {scored.map((result) => (
        <ScoredSection key={result.flight.flightNo} result={result} seed={facts.seed} {...shared} />
      ))}
      {differences.map((result) => (
        <DifferenceSection key={result.flight.flightNo} result={result} preferences={member.preferences} />
      ))}
      {scored.length === 0 ? null : <FollowedSection followed={followed} preferences={member.preferences} />}
    </>
  );
}
