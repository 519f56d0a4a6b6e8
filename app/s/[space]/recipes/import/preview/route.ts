import { previewRequest } from "@/lib/model/exchange/import-request";
import { previewOf } from "@/lib/model/exchange/preview";
import { apiRoute } from "@/lib/server/api-route";
import { readForImport } from "@/lib/server/exchange/import-recipes";
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
  const { kettle } = previewRequest.parse(fields);
  const preview = previewOf(await readForImport(member, { bytes, kettle }));
  return Response.json(preview, { headers: { "Cache-Control": "no-store" } });
});
