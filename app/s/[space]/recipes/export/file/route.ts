import { exportRequest } from "@/lib/model/exchange/export-request";
import { exportedFileName, exportedText, KINDS_OF_FILE } from "@/lib/model/exchange/export-file";
import { apiRoute } from "@/lib/server/api-route";
import { recipesToExport } from "@/lib/server/exchange/export-recipes";
import { requireMember } from "@/lib/server/session";

interface SpaceContext {
  readonly params: Promise<{ readonly space: string }>;
}

export const GET = apiRoute(async (request: Request, { params }: SpaceContext) => {
  const member = await requireMember((await params).space);
  const query = new URL(request.url).searchParams;
  const {
    recipe: ids,
    format,
    rev,
  } = exportRequest.parse({
    recipe: query.getAll("recipe"),
    format: query.get("format"),
    rev: query.get("rev"),
  });
  const recipes = await recipesToExport(member, { ids, rev });
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
