import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { filterOf } from "@/lib/model/summary/brew-filter";
import { askedOf, questionOf } from "@/lib/model/summary/question";
import { roleMay } from "@/lib/model/roles";
import { listComparisons } from "@/lib/server/comparisons/reads";
import { requireMember } from "@/lib/server/session";
import { listAcross } from "@/lib/server/summaries/across";
import { ComparisonView } from "@/lib/ui/across/comparison-view";
import { QuestionForm } from "@/lib/ui/across/question-form";
import { saveComparisonAction } from "./actions";
import { BrewFilterFields } from "./brew-filter-fields";
import { ExportLinks } from "./export-links";
import { readChoices } from "./read-choices";
import { SaveForm } from "./save-form";

export const metadata: Metadata = { title: "Ask the log" };

interface ComparisonsPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>;
}

export default async function ComparisonsPage({ params, searchParams }: ComparisonsPageProps) {
  const { space } = await params;
  const member = await requireMember(space);
  const asked = askedOf(await searchParams);
  const question = questionOf(asked);
  const [{ brews, answer }, saved, choices] = await Promise.all([
    listAcross(member, filterOf(question), { question, asked }),
    listComparisons(member),
    readChoices(member),
  ]);
  const home = `/s/${space}`;
  const { preferences } = member;
  return (
    <>
      <h1>Ask the log</h1>
      <p className="text-muted">One number over all brews of the club, grouped and held against each other.</p>
      <SavedList home={home} saved={saved} />
      <QuestionForm question={question}>
        <BrewFilterFields question={question} choices={choices} />
      </QuestionForm>
      {brews.length === 0 ? (
        <p className="mt-6">No brew is as asked.</p>
      ) : (
        <>
          <ComparisonView {...{ home, asked, brews, answer, preferences }} path={`${home}/comparisons`} />
          <ExportLinks home={home} question={question} />
        </>
      )}
      {roleMay(member.role, "brew") ? (
        <section aria-labelledby="save" className="no-print mt-10 max-w-xl">
          <h2 id="save">Keep this question</h2>
          <SaveForm id={randomUUID()} question={question} action={saveComparisonAction.bind(null, space)} />
        </section>
      ) : null}
    </>
  );
}

function SavedList(a: { readonly home: string; readonly saved: Awaited<ReturnType<typeof listComparisons>> }) {
  if (a.saved.length === 0) return null;
  return (
    <nav aria-label="Saved comparisons" className="local-nav mt-2">
      <ul className="flex flex-wrap gap-x-5">
        {a.saved.map(({ id, name }) => (
          <li key={id}>
            <Link href={`${a.home}/comparisons/${id}`}>{name}</Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
