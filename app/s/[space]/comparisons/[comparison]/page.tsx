import type { Metadata } from "next";
import Link from "next/link";
import { filterOf } from "@/lib/model/summary/brew-filter";
import { addressOfQuestion, askedOf } from "@/lib/model/summary/question";
import { listAcross } from "@/lib/server/summaries/across";
import { ComparisonView } from "@/lib/ui/across/comparison-view";
import { Day } from "@/lib/ui/day";
import { deleteComparisonAction, renameComparisonAction } from "../actions";
import { ExportLinks } from "../export-links";
import { ChangeForms } from "./change-forms";
import { readComparison } from "./read-comparison";

interface SavedComparisonPageProps {
  readonly params: Promise<{ readonly space: string; readonly comparison: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>;
}

export async function generateMetadata({ params }: SavedComparisonPageProps): Promise<Metadata> {
  const { space, comparison } = await params;
  return { title: (await readComparison(space, comparison)).saved.name };
}

export default async function SavedComparisonPage({ params, searchParams }: SavedComparisonPageProps) {
  const { space, comparison } = await params;
  const { member, saved } = await readComparison(space, comparison);
  const { id, name, question, lockVersion } = saved;
  const asked = askedOf(await searchParams);
  const { brews, answer } = await listAcross(member, filterOf(question), { question, asked });
  const home = `/s/${space}`;
  return (
    <>
      <h1>{name}</h1>
      <p className="text-muted">
        Kept by {saved.madeBy}, <Day at={saved.createdAt} />.{" "}
        <Link href={`${home}/comparisons?${addressOfQuestion(question)}`}>Ask otherwise</Link>
      </p>
      {brews.length === 0 ? (
        <p className="mt-6">No brew is as asked.</p>
      ) : (
        <ComparisonView
          {...{ home, asked, brews, answer }}
          path={`${home}/comparisons/${id}`}
          preferences={member.preferences}
        />
      )}
      <ExportLinks home={home} question={question} />
      {saved.mayChange ? (
        <ChangeForms
          {...{ id, name, lockVersion }}
          rename={renameComparisonAction.bind(null, space)}
          end={deleteComparisonAction.bind(null, space)}
        />
      ) : null}
    </>
  );
}
