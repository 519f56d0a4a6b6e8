import { z } from "zod";
import { revisionNumber } from "@/lib/model/measured";
import { recordId } from "@/lib/model/written";
import { keptOf } from "@/lib/server/adaptations/choose";
import { listAdaptations } from "@/lib/server/adaptations/reads";
import { apiRoute } from "@/lib/server/api-route";
import { requireMember } from "@/lib/server/session";

interface ChoiceContext {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

const asked = z.strictObject({ rev: revisionNumber, kettle: recordId });

/** What is chosen now for one kettle, for a panel of a table that was read some time ago. */
export const GET = apiRoute(async (request: Request, { params }: ChoiceContext) => {
  const { space, recipe: recipeId } = await params;
  const member = await requireMember(space);
  const { rev, kettle } = asked.parse(Object.fromEntries(new URL(request.url).searchParams));
  const present = (await listAdaptations(member, { recipeId, rev })).get(kettle);
  const kept = present === undefined ? null : keptOf(present);
  return Response.json({ kept }, { headers: { "Cache-Control": "no-store" } });
});
