import { apiRoute } from "@/lib/server/api-route";
import { exportOwnData } from "@/lib/server/member-file/export-member";
import { requireViewer } from "@/lib/server/session";
import { streamOf } from "@/lib/server/text-stream";

export const GET = apiRoute(async () => {
  const now = new Date();
  const pieces = await exportOwnData(await requireViewer(), now);
  return new Response(streamOf(pieces), {
    headers: {
      "Content-Type": "application/json; charset=utf-8",
      "Content-Disposition": `attachment; filename="my-brewing-data-${now.toISOString().slice(0, 10)}.json"`,
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
    },
  });
});
