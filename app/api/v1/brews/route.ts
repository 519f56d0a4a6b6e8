import { brewsQuery } from "@/lib/model/summary/brews-page";
import { tokenRoute } from "@/lib/server/sensors/token-route";
import { listBrewPage } from "@/lib/server/summaries/page";

/** Reads what the brews of the club come to, page by page. A key for one brew knows of no other. */
export const GET = tokenRoute(async (request, { member, brewId }) => {
  const query = brewsQuery.parse(Object.fromEntries(new URL(request.url).searchParams));
  const page = await listBrewPage(member, query, brewId);
  return Response.json(page, { headers: { "cache-control": "no-store" } });
});
