import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { isAuthorOf, listPublications } from "@/lib/server/publications/reads";
import { readRecipe } from "../read-recipe";
import { publishAction, withdrawAction } from "./actions";
import { PublicationList } from "./publication-list";
import { PublishForm } from "./publish-form";

interface PublishPageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

export async function generateMetadata({ params }: PublishPageProps): Promise<Metadata> {
  const { space, recipe: id } = await params;
  return { title: `Publish ${(await readRecipe(space, id)).recipe.title}` };
}

export default async function PublishPage({ params }: PublishPageProps) {
  const { space, recipe: id } = await params;
  const { member, recipe } = await readRecipe(space, id);
  if (!roleMay(member.role, "organise")) notFound();
  const [publications, isOwn] = await Promise.all([listPublications(member, id), isAuthorOf(member, id, recipe.rev)]);
  const isClub = member.spaceKind === "club";
  return (
    <div className="max-w-2xl">
      <h1 className="mb-2">Publish “{recipe.title}”</h1>
      <p className="mb-4">
        <Link href={`/s/${space}/recipes/${id}`}>Back to the recipe</Link>
      </p>
      <section aria-labelledby="who" className="mb-6">
        <h2 id="who" className="mb-2">
          Who sees this?
        </h2>
        <p>
          Everybody, without signing in, and search engines: the title, every ingredient, amount and note of revision{" "}
          {recipe.rev}, and the figures computed of it. Read the notes before. Not shown are the club’s people, the name
          of the kettle, readings, brews, and every other revision. Whoever is signed in may copy it. It can be
          withdrawn; copies that others made stay with them.
        </p>
      </section>
      <PublishForm
        recipeId={id}
        rev={recipe.rev}
        ownName={isOwn ? member.displayName : null}
        otherwise={isClub ? `a member of ${member.spaceName}` : "a home brewer"}
        action={publishAction.bind(null, member.spaceSlug)}
      />
      <PublicationList publications={publications} withdraw={withdrawAction.bind(null, member.spaceSlug, id)} />
    </div>
  );
}
