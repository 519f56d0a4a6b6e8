import { deliveryInput } from "@/lib/model/log/delivery";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { boundedBody, tooLarge } from "@/lib/server/bounded-body";
import { jsonOf } from "@/lib/server/json-body";
import { requestMember } from "@/lib/server/log/request-member";
import { requireSignedIn } from "@/lib/server/log/require-signed-in";
import { ingestSheets } from "@/lib/server/tastings/sheets-ingest";

/** A hundred sheets with full notes. */
const MOST_BYTES = 2 * 1024 * 1024;

/** Takes what a judge writes from his or her device, in any order and as often as it likes. */
export const POST = apiRoute(async (request: Request) => {
  // Before the body is read: nobody sends in vain.
  const { userId } = await requireSignedIn();
  const body = await boundedBody(request, MOST_BYTES, () => tooLarge("delivery", MOST_BYTES));
  const delivery = deliveryInput.parse(jsonOf(body));
  if (delivery.user !== userId) throw new AppError("UNAUTHENTICATED", "Somebody else is signed in on this device.");
  const answer = await ingestSheets(await requestMember(delivery.space, "tasting"), delivery);
  // As it is: to compress so few letters takes longer than to send them.
  return Response.json(answer, { headers: { "Cache-Control": "no-store, no-transform" } });
});
