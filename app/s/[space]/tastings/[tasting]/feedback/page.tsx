import type { Metadata } from "next";
import Link from "next/link";
import { feedbackOf } from "@/lib/model/tasting/results-feedback";
import { findTastingFacts } from "@/lib/server/tastings/results-read";
import { readTasting } from "../read-tasting";
import { FeedbackSheet } from "./feedback-sheet";

interface FeedbackPageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export async function generateMetadata({ params }: FeedbackPageProps): Promise<Metadata> {
  const { space, tasting } = await params;
  return { title: `Feedback of ${(await readTasting(space, tasting)).tasting.title}` };
}

/** What judges tell the brewers, a sheet for each beer, to be printed: the reader's own beers, or all of them. */
export default async function FeedbackPage({ params, searchParams }: FeedbackPageProps) {
  const { space, tasting: id } = await params;
  const { member, tasting } = await readTasting(space, id);
  const facts = await findTastingFacts(member, id);
  if (facts === null) {
    return (
      <>
        <h1>Feedback</h1>
        <p className="mt-2">There is feedback once the entries of {tasting.title} have been revealed.</p>
      </>
    );
  }
  const all = feedbackOf(facts);
  const own = all.filter(({ entry }) => entry.brewerIds.includes(member.userId));
  const isAll = (await searchParams)["of"] === "all" || own.length === 0;
  const here = `/s/${space}/tastings/${id}`;
  return (
    <>
      <h1>Feedback</h1>
      <p className="text-muted">{tasting.title}. Judges are named by their seats.</p>
      <p className="no-print mt-2 flex flex-wrap gap-x-6">
        <Link className="target" href={`${here}/results`}>
          Results
        </Link>
        {own.length === 0 ? null : (
          <Link className="target" href={isAll ? `${here}/feedback` : `${here}/feedback?of=all`}>
            {isAll ? "Your own beers" : "All beers"}
          </Link>
        )}
      </p>
      {(isAll ? all : own).map((feedback) => (
        <FeedbackSheet
          key={feedback.entry.entryNo}
          feedback={feedback}
          home={`/s/${space}`}
          preferences={member.preferences}
        />
      ))}
    </>
  );
}
