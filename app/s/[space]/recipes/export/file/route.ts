import { exportRequest, exportQuery } from "@/lib/model/exchange/export-request";
import { exportedFileName, exportedText, KINDS_OF_FILE } from "@/lib/model/exchange/export-file";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { recipesToExport } from "@/lib/server/exchange/export-recipes";
import { requireMember } from "@/lib/server/session";

interface SpaceContext {
  readonly params: Promise<{ readonly space: string }>;
}

export const GET = apiRoute(async (request: Request, { params }: SpaceContext) => {
  const member = await requireMember((await params).space);
  const query = new URL(request.url).searchParams;
  const asked = exportRequest.safeParse(exportQuery(query));
  const form = `/s/${member.spaceSlug}/recipes/export`;
  if (!asked.success) {
    if (isForReading(request)) return backToForm(form, query);
    throw asked.error;
  }
  const { recipe: ids, format, rev } = asked.data;
  const recipes = await recipesToExport(member, { ids, rev }).catch((error: unknown) => {
    if (error instanceof AppError && error.code === "NOT_FOUND" && isForReading(request)) return null;
    throw error;
  });
  if (recipes === null) return backToForm(form, query);
  const [first] = recipes;
  const title = recipes.length === 1 && first !== undefined ? first.title : `${member.spaceSlug} recipes`;
  return new Response(exportedText(format, recipes), {
    headers: {
      "Content-Type": `${KINDS_OF_FILE[format].mediaType}; charset=utf-8`,
      "Content-Disposition": `attachment; filename="${exportedFileName(title, format)}"`,
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
    },
  });
});

/** A browser that opens an address asks for a page; a program asks for what it can read. */
function isForReading(request: Request): boolean {
  return (request.headers.get("accept") ?? "").includes("text/html");
}

/** The form says what is wrong with its own request, which goes back to it as it came. */
function backToForm(form: string, query: URLSearchParams): Response {
  const back = new URLSearchParams([...query, ["refused", "yes"]]);
  return new Response(null, { status: 303, headers: { Location: `${form}?${back}`, "Cache-Control": "no-store" } });
}
