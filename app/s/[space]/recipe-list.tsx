import Link from "next/link";
import type { RecipeSummary } from "@/lib/model/recipe-content";
import { roleMay, type Role } from "@/lib/model/roles";
import { EmptyState } from "@/lib/ui/empty-state";

interface RecipeListProps {
  readonly home: string;
  readonly recipes: readonly RecipeSummary[];
  readonly role: Role;
}

const MOST_SHOWN = 6;

/** The recipes that changed last. */
export function RecipeList({ home, recipes, role }: RecipeListProps) {
  const write = roleMay(role, "write recipes") ? <Link href={`${home}/recipes/new`}>Write a recipe</Link> : undefined;
  return (
    <section aria-labelledby="recipes">
      <h2 id="recipes" className="mb-3">
        Recipes
      </h2>
      {recipes.length === 0 ? (
        <EmptyState action={write}>
          A recipe says what the beer should be. It is written for one kettle and computed for all the others.
        </EmptyState>
      ) : (
        <>
          <ul className="list-ruled">
            {recipes.slice(0, MOST_SHOWN).map((recipe) => (
              <li key={recipe.id} className="flex items-center justify-between gap-4">
                <Link href={`${home}/recipes/${recipe.id}`} className="target">
                  {recipe.title}
                </Link>
                <span className="text-sm text-muted">rev. {recipe.headRev}</span>
              </li>
            ))}
          </ul>
          <p className="mt-3 flex flex-wrap gap-x-5">
            {write}
            {recipes.length > MOST_SHOWN ? <Link href={`${home}/recipes`}>All {recipes.length} recipes</Link> : null}
          </p>
        </>
      )}
    </section>
  );
}
