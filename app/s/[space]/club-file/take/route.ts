import { CLUB_FILE_BYTES } from "@/lib/model/club-file/club-file";
import { takeRequest } from "@/lib/model/club-file/take-request";
import { apiRoute } from "@/lib/server/api-route";
import { importClub } from "@/lib/server/club-file/import-club";
import { decodeText } from "@/lib/server/exchange/decode-text";
import { readUpload } from "@/lib/server/exchange/read-upload";
import { requireAbility } from "@/lib/server/permissions";
import { requireMember } from "@/lib/server/session";

interface SpaceContext {
  readonly params: Promise<{ readonly space: string }>;
}

export const POST = apiRoute(async (request: Request, { params }: SpaceContext) => {
  const member = await requireMember((await params).space);
  // Before the body is read: nobody sends megabytes in vain.
  requireAbility(member, "organise");
  const { bytes, fields } = await readUpload(request, CLUB_FILE_BYTES);
  const taken = await importClub(member, { text: decodeText(bytes), matches: takeRequest.parse(fields) });
  return Response.json(taken, { status: 201, headers: { "Cache-Control": "no-store" } });
});
