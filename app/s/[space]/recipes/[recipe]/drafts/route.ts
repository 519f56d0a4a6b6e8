import { apiRoute } from "@/lib/server/api-route";
import { listDrafts } from "@/lib/server/drafts/reads";
import { requireMember } from "@/lib/server/session";
import { ofOthers } from "../of-others";

interface DraftsContext {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

/** Who else is writing on a recipe now, for a page that stays open. */
export const GET = apiRoute(async (_request: Request, { params }: DraftsContext) => {
  const { space, recipe } = await params;
  const drafts = await listDrafts(await requireMember(space), recipe);
  return Response.json(ofOthers(drafts), { headers: { "Cache-Control": "no-store" } });
});
