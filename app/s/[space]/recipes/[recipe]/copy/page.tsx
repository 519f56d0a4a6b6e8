import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { findRevision } from "@/lib/server/recipes/reads";
import { listWritableSpaces } from "@/lib/server/spaces/writable";
import { CopyForm } from "@/lib/ui/copy-form";
import { readRecipe } from "../read-recipe";
import { copyRecipeAction } from "./actions";

interface CopyPageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
  readonly searchParams: Promise<{ readonly rev?: string | string[] }>;
}

export async function generateMetadata({ params }: CopyPageProps): Promise<Metadata> {
  const { space, recipe: id } = await params;
  return { title: `Copy ${(await readRecipe(space, id)).recipe.title}` };
}

export default async function CopyPage({ params, searchParams }: CopyPageProps) {
  const { space, recipe: id } = await params;
  const { member, recipe } = await readRecipe(space, id);
  const wanted = (await searchParams).rev;
  const found = wanted === undefined ? recipe : await findRevision(member, id, Number(wanted));
  if (found === null) notFound();
  const { title, rev, authorName } = found;
  return (
    <div className="max-w-xl">
      <h1>Copy “{title}”</h1>
      <p className="my-4 text-muted">
        A copy of <Link href={`/s/${space}/recipes/${id}/revisions/${rev}`}>revision {rev}</Link> that goes its own way:
        later revisions of either change nothing in the other. It says, as long as it lasts, that it is after “{title}”
        by {authorName}.
      </p>
      <CopyForm
        fixed={{ id: randomUUID(), recipeId: id, rev: String(rev) }}
        targets={await listWritableSpaces(member)}
        title={title}
        action={copyRecipeAction.bind(null, member.spaceSlug)}
      />
    </div>
  );
}
