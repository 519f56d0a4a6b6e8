import { csvText } from "@/lib/model/csv";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { listKettleEntries } from "@/lib/server/kettles/entries";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import { requireMember } from "@/lib/server/session";
import { streamOf } from "@/lib/server/text-stream";
import { csvHeading, csvRow } from "@/lib/ui/kettles/csv-table";
import { readView } from "@/lib/ui/kettles/kettle-view";
import { computedRows } from "./computed-rows";

interface CsvContext {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

/** The table of all kettles as the address asks for it, in the reader's units. */
export const GET = apiRoute(async (request: Request, { params }: CsvContext) => {
  const { space, recipe: recipeId } = await params;
  const member = await requireMember(space);
  const { preferences } = member;
  const view = readView(Object.fromEntries(new URL(request.url).searchParams));
  const { rev: asked } = view;
  const revision = await (asked === null ? findRecipe(member, recipeId) : findRevision(member, recipeId, asked));
  if (revision === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
  const { rev, content } = revision;
  const written = recipeIntention(content);
  if (written === null) throw new AppError("CONFLICT", "This revision does not brew on its own kettle.");
  const entries = await listKettleEntries(member, { recipeId, rev });
  const rows = computedRows(member, { content, written, entries, view });

  async function* lines(): AsyncGenerator<string, void> {
    yield csvText([csvHeading(preferences)], { byteOrderMark: true });
    for await (const row of rows) yield csvText([csvRow(row, preferences)]);
  }
  return new Response(streamOf(lines()), {
    headers: {
      "Content-Type": "text/csv; charset=utf-8",
      "Content-Disposition": `attachment; filename="kettles-revision-${String(rev)}.csv"`,
      "Cache-Control": "no-store",
    },
  });
});
