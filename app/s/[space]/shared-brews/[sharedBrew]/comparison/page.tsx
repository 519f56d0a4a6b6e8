import type { Metadata } from "next";
import Link from "next/link";
import { askedOf, questionOf } from "@/lib/model/summary/question";
import { listAcross } from "@/lib/server/summaries/across";
import { ComparisonView } from "@/lib/ui/across/comparison-view";
import { EmptyState } from "@/lib/ui/empty-state";
import { QuestionForm } from "@/lib/ui/across/question-form";
import { readSharedBrew } from "../read-shared-brew";

interface ComparisonPageProps {
  readonly params: Promise<{ readonly space: string; readonly sharedBrew: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>;
}

export async function generateMetadata({ params }: ComparisonPageProps): Promise<Metadata> {
  const { space, sharedBrew } = await params;
  return { title: `Comparison: ${(await readSharedBrew(space, sharedBrew)).shared.title}` };
}

export default async function SharedBrewComparisonPage({ params, searchParams }: ComparisonPageProps) {
  const { space, sharedBrew } = await params;
  const { member, shared } = await readSharedBrew(space, sharedBrew);
  const asked = askedOf(await searchParams);
  const question = questionOf(asked);
  const { brews, answer } = await listAcross(member, { sharedBrewId: sharedBrew }, { question, asked });
  const home = `/s/${space}`;
  const path = `${home}/shared-brews/${sharedBrew}`;
  return (
    <>
      <h1>Comparison: {shared.title}</h1>
      <p className="text-muted">
        <Link href={path}>The shared brew</Link>
      </p>
      {brews.length === 0 ? (
        <EmptyState action={<Link href={path}>Who takes part</Link>}>
          Here the brews of this shared brew are held against each other, as soon as somebody has planned one.
        </EmptyState>
      ) : (
        <>
          <QuestionForm question={question} />
          <ComparisonView
            {...{ home, asked, brews, answer }}
            path={`${path}/comparison`}
            preferences={member.preferences}
          />
        </>
      )}
    </>
  );
}
