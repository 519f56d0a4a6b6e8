import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { findFamily } from "@/lib/server/recipes/family";
import { readRecipe } from "../read-recipe";
import { FamilyTree } from "./family-tree";

interface FamilyPageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

export async function generateMetadata({ params }: FamilyPageProps): Promise<Metadata> {
  const { space, recipe: id } = await params;
  return { title: `Family of ${(await readRecipe(space, id)).recipe.title}` };
}

export default async function FamilyPage({ params }: FamilyPageProps) {
  const { space, recipe: id } = await params;
  const { member } = await readRecipe(space, id);
  const family = (await findFamily(member, id)) ?? notFound();
  const { root, size, hidden } = family;
  return (
    <>
      <h1 className="mb-4">Family of a recipe</h1>
      <p className="mb-4 text-muted">
        {size === 1
          ? "Nobody has copied this recipe, and it is no copy."
          : `${size} recipes go back to one text; each stands below the one that it was copied of.`}
        {hidden === 0 ? "" : ` ${hidden} of them are in clubs or on benches that are not yours, and stay unnamed.`}
      </p>
      <FamilyTree root={root} own={{ spaceSlug: member.spaceSlug, recipeId: id }} />
    </>
  );
}
