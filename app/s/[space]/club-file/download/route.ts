import { apiRoute } from "@/lib/server/api-route";
import { exportClub } from "@/lib/server/club-file/export-club";
import { requireMember } from "@/lib/server/session";
import { streamOf } from "@/lib/server/text-stream";

interface SpaceContext {
  readonly params: Promise<{ readonly space: string }>;
}

export const GET = apiRoute(async (_request: Request, { params }: SpaceContext) => {
  const member = await requireMember((await params).space);
  const now = new Date();
  const pieces = await exportClub(member, now);
  const day = now.toISOString().slice(0, 10);
  return new Response(streamOf(pieces), {
    headers: {
      "Content-Type": "application/json; charset=utf-8",
      "Content-Disposition": `attachment; filename="${member.spaceSlug}-${day}.json"`,
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
    },
  });
});
