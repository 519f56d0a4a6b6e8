import { deliveryInput } from "@/lib/model/log/delivery";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { boundedBody, tooLarge } from "@/lib/server/bounded-body";
import { ingest } from "@/lib/server/log/ingest";
import { requestMember } from "@/lib/server/log/request-member";
import { operations } from "@/lib/server/operations";
import { requireSignedIn } from "@/lib/server/log/require-signed-in";

const MOST_BYTES = 512 * 1024;

/** Takes events of brew days from a phone, in any order and as often as it likes. */
export const POST = apiRoute(async (request: Request) => {
  // Before the body is read: nobody sends in vain.
  const { userId } = await requireSignedIn();
  const body = await boundedBody(request, MOST_BYTES, () => tooLarge("delivery", MOST_BYTES));
  const delivery = deliveryInput.parse(jsonOf(body));
  if (delivery.user !== userId) throw new AppError("UNAUTHENTICATED", "Somebody else is signed in on this device.");
  const answer = await ingest(await requestMember(delivery.space), delivery);
  countAnswer(answer);
  // As it is: to compress so few letters takes longer than to send them.
  return Response.json(answer, { headers: { "Cache-Control": "no-store, no-transform" } });
});

function countAnswer({ stored, duplicate, rejected }: Awaited<ReturnType<typeof ingest>>): void {
  const outcomes = { stored: stored.length, duplicate: duplicate.length, rejected: rejected.length };
  for (const [outcome, by] of Object.entries(outcomes)) {
    operations()?.count("gylebook_log_events_total", { outcome }, by);
  }
}

function jsonOf(body: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(body));
  } catch (cause) {
    throw new AppError("INVALID", "The delivery is not JSON.", { cause });
  }
}
