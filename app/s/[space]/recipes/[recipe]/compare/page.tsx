import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { recipeDifference } from "@/lib/model/recipe-difference";
import { readReference, writeReference } from "@/lib/model/revision-reference";
import { findOrigin } from "@/lib/server/recipes/origin";
import { listRevisions } from "@/lib/server/recipes/list-revisions";
import { findReferred } from "@/lib/server/recipes/referred";
import { readRecipe } from "../read-recipe";
import { ChangeTable } from "./change-table";
import { CompareForm } from "./compare-form";
import { LedgerDifference } from "./ledger-difference";
import { comparedText } from "./compared-text";
import { revisionChoices } from "./revision-choices";

interface ComparePageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export async function generateMetadata({ params }: ComparePageProps): Promise<Metadata> {
  const { space, recipe: id } = await params;
  return { title: `What changed in ${(await readRecipe(space, id)).recipe.title}` };
}

export default async function ComparePage({ params, searchParams }: ComparePageProps) {
  const { space, recipe: id } = await params;
  const { member, recipe: head } = await readRecipe(space, id);
  const [asked, origin, revisions] = await Promise.all([
    searchParams,
    findOrigin(member, id),
    listRevisions(member, id),
  ]);
  const choices = revisionChoices(revisions, origin);
  // Unless the address says otherwise: the newest revision against the one before it, or against what it was copied of.
  const usual = { from: choices[1]?.value ?? "1", to: String(head.rev) };
  const [from, to] = [readReference(asked.from ?? usual.from), readReference(asked.to ?? usual.to)];
  if (from === null || to === null) notFound();
  const [before, after] = await Promise.all([findReferred(member, id, from), findReferred(member, id, to)]);
  if (before === null || after === null) notFound();
  const chosen = { from: writeReference(from), to: writeReference(to) };
  const [one, other] = [comparedText(before, from), comparedText(after, to)];
  return (
    <>
      <h1 className="mb-2">What changed in {head.title}</h1>
      <p className="mb-4">
        <Link href={`/s/${space}/recipes/${id}`}>Back to the recipe</Link>
      </p>
      <CompareForm choices={choices} chosen={chosen} named={{ from: one.name, to: other.name }} />
      <ChangeTable
        changes={recipeDifference(before.content.recipe, after.content.recipe)}
        names={{ before: one.name, after: other.name }}
        preferences={member.preferences}
      />
      <LedgerDifference before={one} after={other} preferences={member.preferences} />
    </>
  );
}
