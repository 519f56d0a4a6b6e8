import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { listRecipes } from "@/lib/server/recipes/list";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { createSharedBrewAction } from "./actions";
import { recipeChoices } from "./recipe-choices";
import { SharedBrewForm } from "./shared-brew-form";

export const metadata: Metadata = { title: "Call a shared brew" };

interface NewSharedBrewPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<{ readonly recipe?: string | string[]; readonly rev?: string | string[] }>;
}

export default async function NewSharedBrewPage({ params, searchParams }: NewSharedBrewPageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "organise")) notFound();
  const recipes = await listRecipes(member);
  const { choices, chosen } = recipeChoices(recipes, await searchParams);
  return (
    <div className="max-w-xl">
      <h1>Call a shared brew</h1>
      <p className="my-4 text-muted">
        Everybody brews the same revision, computed for their own kettle under the same rules. Members see it on the
        club’s page and join it from there. Days and rules can change later; whoever has joined is told.
      </p>
      {choices.length === 0 ? (
        <EmptyState action={<Link href={`/s/${member.spaceSlug}/recipes/new`}>Write a recipe</Link>}>
          A shared brew needs a recipe, and the club has none yet.
        </EmptyState>
      ) : (
        <SharedBrewForm
          choices={choices}
          chosen={chosen}
          action={createSharedBrewAction.bind(null, member.spaceSlug)}
        />
      )}
    </div>
  );
}
