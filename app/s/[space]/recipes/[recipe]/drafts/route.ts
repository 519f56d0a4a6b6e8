import { apiRoute } from "@/lib/server/api-route";
import { listDrafts } from "@/lib/server/drafts/reads";
import { requireMember } from "@/lib/server/session";

interface DraftsContext {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

/** Who else is writing on a recipe now, for a page that stays open. */
export const GET = apiRoute(async (_request: Request, { params }: DraftsContext) => {
  const { space, recipe } = await params;
  const drafts = await listDrafts(await requireMember(space), recipe);
  const others = drafts.filter(({ isOwn }) => !isOwn).map(({ writerName, begunAt }) => ({ writerName, begunAt }));
  return Response.json(others, { headers: { "Cache-Control": "no-store" } });
});
