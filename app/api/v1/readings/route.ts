import { NO_SUCH_BREW, NOT_YOURS } from "@/lib/server/log/writable-brews";
import type { ReadingsAnswer } from "@/lib/model/sensor/readings-answer";
import { postReadings } from "@/lib/server/sensors/post-readings";
import { readReadings } from "@/lib/server/sensors/read-readings";
import { tokenRoute } from "@/lib/server/sensors/token-route";

/** Takes readings of sensors and scripts. The answer says of each what became of it. */
export const POST = tokenRoute(async (request, sender) => {
  const readings = await readReadings(request);
  const answer = await postReadings(sender, readings, new Date());
  return Response.json(answer, { status: statusOf(answer), headers: { "cache-control": "no-store" } });
});

/** A request of which nothing was right is refused as a whole, so that a script notices without reading the answer. */
function statusOf({ stored, duplicate, results }: ReadingsAnswer): number {
  if (stored + duplicate > 0) return 200;
  if (results.every(({ reason }) => reason === NO_SUCH_BREW)) return 404;
  return results.every(({ reason }) => reason === NOT_YOURS) ? 403 : 400;
}
