import { importRequest } from "@/lib/model/exchange/import-request";
import { apiRoute } from "@/lib/server/api-route";
import { importRecipes } from "@/lib/server/exchange/import-recipes";
import { readUpload } from "@/lib/server/exchange/read-upload";
import { requireAbility } from "@/lib/server/permissions";
import { requireMember } from "@/lib/server/session";

interface SpaceContext {
  readonly params: Promise<{ readonly space: string }>;
}

export const POST = apiRoute(async (request: Request, { params }: SpaceContext) => {
  const member = await requireMember((await params).space);
  // Before the body is read: nobody sends megabytes in vain.
  requireAbility(member, "write recipes");
  const { bytes, fields } = await readUpload(request);
  const imported = await importRecipes(member, { bytes, ...importRequest.parse(fields) });
  return Response.json(imported, { status: 201, headers: { "Cache-Control": "no-store" } });
});
