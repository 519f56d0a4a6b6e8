import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import type { RecipeSummary } from "@/lib/model/recipe-content";
import {
  RECIPE_PAGE_SIZE,
  RECIPE_SORTS,
  recipeOrder,
  type RecipeOrder,
  type RecipeSort,
} from "@/lib/model/recipe-list";
import { listDrafts } from "@/lib/server/drafts/reads";
import { listRecipePage } from "@/lib/server/recipes/list";
import { requireMember } from "@/lib/server/session";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { EmptyState } from "@/lib/ui/empty-state";
import { PageLinks } from "@/lib/ui/page-links";
import { OpenDrafts } from "./open-drafts";

export const metadata: Metadata = { title: "Recipes" };

interface RecipesPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export default async function RecipesPage({ params, searchParams }: RecipesPageProps) {
  const member = await requireMember((await params).space);
  const order = recipeOrder(await searchParams);
  const [{ recipes, total }, drafts] = await Promise.all([listRecipePage(member, order), listDrafts(member, null)]);
  const home = `/s/${member.spaceSlug}`;
  const write = roleMay(member.role, "write recipes") ? <WriteLinks home={home} /> : undefined;
  return (
    <>
      <div className="mb-6 flex flex-wrap items-center justify-between gap-4">
        <h1>Recipes</h1>
        {total === 0 ? null : (
          <span className="no-print flex flex-wrap items-center gap-x-6">
            <Link href={`${home}/recipes/export`} className="target">
              Export
            </Link>
            {write}
          </span>
        )}
      </div>
      <OpenDrafts home={home} drafts={drafts} />
      {total === 0 ? (
        <EmptyState action={write}>
          A recipe says what the beer should be. It is written for one kettle and computed for all the others.
        </EmptyState>
      ) : (
        <>
          <DataTable
            caption="Recipes"
            captionHidden
            columns={columnsFor(home, order)}
            records={recipes}
            keyOf={({ id }) => id}
          />
          <PageLinks
            label="Pages of the recipes"
            page={order.page}
            pages={Math.ceil(total / RECIPE_PAGE_SIZE)}
            hrefOf={(page) => `${home}/recipes?sort=${order.sort}&order=${order.direction}&page=${page}`}
          />
        </>
      )}
    </>
  );
}

function WriteLinks({ home }: { readonly home: string }) {
  return (
    <span className="flex flex-wrap items-center gap-x-6">
      <Link href={`${home}/recipes/import`} className="target">
        Import
      </Link>
      <Link href={`${home}/recipes/new`} className="button">
        Write a recipe
      </Link>
    </span>
  );
}

function columnsFor(home: string, order: RecipeOrder): readonly DataColumn<RecipeSummary>[] {
  const sortable = (sort: RecipeSort) => sorting(`${home}/recipes`, sort, order);
  return [
    {
      id: "title",
      label: "Recipe",
      ...sortable("title"),
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
    {
      id: "revision",
      label: "Revision",
      isNumber: true,
      ...sortable("revision"),
      cell: ({ headRev }) => headRev,
    },
    { id: "author", label: "Last changed by", cell: ({ authorName }) => authorName },
    { id: "changed", label: "Changed", ...sortable("changed"), cell: ({ changedAt }) => <Day at={changedAt} /> },
  ];
}

/** A heading sorts by its column, and turns the order round where the list is sorted by it. */
function sorting(
  list: string,
  sort: RecipeSort,
  order: RecipeOrder,
): Pick<DataColumn<RecipeSummary>, "sortHref" | "sorted"> {
  if (order.sort !== sort) return { sortHref: `${list}?sort=${sort}&order=${RECIPE_SORTS[sort]}` };
  const other = order.direction === "ascending" ? "descending" : "ascending";
  return { sortHref: `${list}?sort=${sort}&order=${other}`, sorted: order.direction };
}
