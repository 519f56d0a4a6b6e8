import { readingsQuery } from "@/lib/model/sensor/readings-page";
import { AppError } from "@/lib/server/app-error";
import { NO_SUCH_BREW } from "@/lib/server/log/writable-brews";
import { findReadings } from "@/lib/server/sensors/read-back";
import { tokenRoute } from "@/lib/server/sensors/token-route";

interface BrewContext {
  readonly params: Promise<{ readonly brew: string }>;
}

/** Reads the readings of a brew back, page by page. */
export const GET = tokenRoute(async (request, { member, brewId }, { params }: BrewContext) => {
  const { brew } = await params;
  const query = readingsQuery.parse(Object.fromEntries(new URL(request.url).searchParams));
  // A key for one brew knows of no other.
  const page = brewId === null || brewId === brew ? await findReadings(member, brew, query) : null;
  if (page === null) throw new AppError("NOT_FOUND", NO_SUCH_BREW);
  return Response.json(page, { headers: { "cache-control": "no-store" } });
});
