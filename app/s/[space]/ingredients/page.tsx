import type { Metadata } from "next";
import Link from "next/link";
import { dayOf } from "@/lib/model/lot-today";
import { roleMay } from "@/lib/model/roles";
import { listIngredients } from "@/lib/server/ingredients/reads";
import { listLosses } from "@/lib/server/lots/figures";
import { listLots } from "@/lib/server/lots/reads";
import { requireMember } from "@/lib/server/session";
import { IngredientFilter } from "./ingredient-filter";
import { allRows, shownRows } from "./ingredient-rows";
import { IngredientTable } from "./ingredient-table";
import { readView, viewQuery, type Query } from "./ingredient-view";

export const metadata: Metadata = { title: "Ingredients" };

/** As many rows as somebody looks through; the rest is one link away. */
const FIRST_ROWS = 60;

interface IngredientsPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<Query>;
}

export default async function IngredientsPage({ params, searchParams }: IngredientsPageProps) {
  const member = await requireMember((await params).space);
  const view = readView(await searchParams);
  const [own, lots, lossOf] = await Promise.all([listIngredients(member), listLots(member), listLosses(member)]);
  const rows = shownRows(allRows({ own, lots, userId: member.userId }), view);
  const shown = view.isWhole ? rows : rows.slice(0, FIRST_ROWS);
  const home = `/s/${member.spaceSlug}/ingredients`;
  const { preferences } = member;
  return (
    <>
      <div className="mb-2 flex flex-wrap items-center justify-between gap-x-6 gap-y-2">
        <h1>Ingredients</h1>
        <p className="no-print flex flex-wrap items-center gap-x-6">
          {roleMay(member.role, "brew") ? (
            <Link href={`${home}/lots/new`} className="button">
              Add a lot
            </Link>
          ) : null}
          {roleMay(member.role, "write recipes") ? (
            <Link href={`${home}/new`} className="target">
              Add an ingredient
            </Link>
          ) : null}
          <a href={`${home}/export${viewQuery({ ...view, isWhole: true })}`} className="target">
            As CSV
          </a>
        </p>
      </div>
      <p className="mb-4 max-w-3xl text-muted">
        A recipe names an ingredient. What is on the shelf is a lot of it, with its own analysis, and a brewer’s sheet
        may be solved with the lot.
      </p>
      <IngredientFilter view={view} />
      <p role="status" className="mb-2">
        {rows.length === 0 ? "Nothing is left by this choice." : countWords(shown.length, rows.length)}
      </p>
      {shown.length === 0 ? null : (
        <IngredientTable {...{ home, rows: shown, view, lossOf, preferences }} today={dayOf(new Date())} />
      )}
      {shown.length === rows.length ? null : (
        <p className="mt-4">
          <Link href={home + viewQuery({ ...view, isWhole: true })} className="target">
            Show all {rows.length}
          </Link>
        </p>
      )}
    </>
  );
}

function countWords(shown: number, all: number): string {
  if (shown < all) return `The first ${String(shown)} of ${String(all)}`;
  return all === 1 ? "One row" : `${String(all)} rows`;
}
