import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import type { RecipeSummary } from "@/lib/model/recipe-content";
import { listRecipes } from "@/lib/server/recipes/reads";
import { requireMember } from "@/lib/server/session";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { EmptyState } from "@/lib/ui/empty-state";

export const metadata: Metadata = { title: "Recipes" };

interface RecipesPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function RecipesPage({ params }: RecipesPageProps) {
  const member = await requireMember((await params).space);
  const recipes = await listRecipes(member);
  const home = `/s/${member.spaceSlug}`;
  const write = roleMay(member.role, "write recipes") ? (
    <span className="flex flex-wrap items-center gap-x-6">
      <Link href={`${home}/recipes/import`} className="target">
        Import
      </Link>
      <Link href={`${home}/recipes/new`} className="button">
        Write a recipe
      </Link>
    </span>
  ) : undefined;
  return (
    <>
      <div className="mb-6 flex flex-wrap items-center justify-between gap-4">
        <h1>Recipes</h1>
        {recipes.length === 0 ? null : (
          <span className="no-print flex flex-wrap items-center gap-x-6">
            <Link href={`${home}/recipes/export`} className="target">
              Export
            </Link>
            {write}
          </span>
        )}
      </div>
      {recipes.length === 0 ? (
        <EmptyState action={write}>
          A recipe says what the beer should be. It is written for one kettle and computed for all the others.
        </EmptyState>
      ) : (
        <DataTable
          caption="Recipes, the latest change first"
          captionHidden
          columns={columnsFor(home)}
          records={recipes}
          keyOf={({ id }) => id}
        />
      )}
    </>
  );
}

function columnsFor(home: string): readonly DataColumn<RecipeSummary>[] {
  return [
    {
      id: "title",
      label: "Recipe",
      cell: ({ id, title }) => (
        <Link href={`${home}/recipes/${id}`} className="target">
          {title}
        </Link>
      ),
    },
    {
      id: "kettles",
      label: "On every kettle",
      cell: ({ id, title }) => (
        <Link href={`${home}/recipes/${id}/kettles`} className="target">
          Kettles<span className="sr-only"> for {title}</span>
        </Link>
      ),
    },
    { id: "revision", label: "Revision", isNumber: true, cell: ({ headRev }) => headRev },
    { id: "author", label: "Last changed by", cell: ({ authorName }) => authorName },
    { id: "changed", label: "Changed", cell: ({ changedAt }) => <Day at={changedAt} /> },
  ];
}
