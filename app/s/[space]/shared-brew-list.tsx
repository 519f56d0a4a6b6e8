import Link from "next/link";
import type { BrewSummary } from "@/lib/model/brew";
import type { RecipeSummary } from "@/lib/model/recipe-content";
import type { SharedBrewSummary } from "@/lib/model/shared-brew";
import { Day } from "@/lib/ui/day";
import { EmptyState } from "@/lib/ui/empty-state";
import { BrewTable } from "./brew-table";

interface SharedBrewListProps {
  readonly home: string;
  readonly sharedBrews: readonly SharedBrewSummary[];
  readonly brews: readonly BrewSummary[];
  readonly recipes: readonly RecipeSummary[];
}

const MOST_SHOWN = 3;

/** What the club brews together, and where each batch is. */
export function SharedBrewList({ home, sharedBrews, brews, recipes }: SharedBrewListProps) {
  return (
    <section aria-labelledby="shared-brews">
      <h2 id="shared-brews" className="mb-3">
        Brewed together
      </h2>
      {sharedBrews.length === 0 ? (
        <EmptyState>
          Nothing yet. The organiser opens a recipe and calls the club to brew it; each member then gets a sheet for
          their own kettle.
        </EmptyState>
      ) : (
        sharedBrews
          .slice(0, MOST_SHOWN)
          .map((shared) => (
            <SharedBrewPart
              key={shared.id}
              home={home}
              shared={shared}
              brews={brews.filter((brew) => brew.sharedBrewId === shared.id)}
              recipeTitle={
                recipes.find((recipe) => recipe.id === shared.recipeId)?.title ?? "a recipe no longer listed"
              }
            />
          ))
      )}
    </section>
  );
}

function SharedBrewPart(props: {
  readonly home: string;
  readonly shared: SharedBrewSummary;
  readonly brews: readonly BrewSummary[];
  readonly recipeTitle: string;
}) {
  const { home, shared, brews, recipeTitle } = props;
  return (
    <article>
      <h3>
        <Link href={`${home}/shared-brews/${shared.id}`} className="target">
          {shared.title}
        </Link>
      </h3>
      <p className="mb-2 text-muted">
        {recipeTitle}, revision {shared.recipeRev}
        {shared.plannedAt === null ? null : (
          <>
            ; planned for <Day at={shared.plannedAt} />
          </>
        )}
        . {progressOf(brews)}
      </p>
      {brews.length === 0 ? null : <BrewTable home={home} caption={`Batches of ${shared.title}`} brews={brews} />}
    </article>
  );
}

function progressOf(brews: readonly BrewSummary[]): string {
  if (brews.length === 0) return "Nobody has joined yet.";
  const done = brews.filter((brew) => brew.state === "closed" || brew.state === "in package").length;
  return `${String(done)} of ${String(brews.length)} in package.`;
}
