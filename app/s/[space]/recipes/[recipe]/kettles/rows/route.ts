import { z } from "zod";
import { revisionNumber } from "@/lib/model/measured";
import type { KettlesHead } from "@/lib/model/kettle-entry";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { listKettleEntries } from "@/lib/server/kettles/entries";
import { readKettles } from "@/lib/server/kettles/figures";
import { findRevision } from "@/lib/server/recipes/reads";
import { requireMember } from "@/lib/server/session";
import { streamOf } from "@/lib/server/text-stream";

interface RowsContext {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

const asked = z.strictObject({ rev: revisionNumber });

/** All kettles for one revision, a line of JSON each, after a line with the recipe and the names of all rows. */
export const GET = apiRoute(async (request: Request, { params }: RowsContext) => {
  const { space, recipe: recipeId } = await params;
  const member = await requireMember(space);
  const { rev } = asked.parse(Object.fromEntries(new URL(request.url).searchParams));
  const revision = await findRevision(member, recipeId, rev);
  if (revision === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
  const entries = await listKettleEntries(member, { recipeId, rev });
  const head: KettlesHead = { content: revision.content, entries };

  async function* lines(): AsyncGenerator<string, void> {
    yield `${JSON.stringify(head)}\n`;
    for await (const kettles of readKettles(member, entries)) {
      yield kettles.map((kettle) => `${JSON.stringify(kettle)}\n`).join("");
    }
  }
  return new Response(streamOf(lines()), {
    headers: { "Content-Type": "application/x-ndjson; charset=utf-8", "Cache-Control": "no-store" },
  });
});
