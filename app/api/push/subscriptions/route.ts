import { pushSubscriptionInput, pushUnsubscription } from "@/lib/model/push/push-input";
import { apiRoute } from "@/lib/server/api-route";
import { boundedBody, tooLarge } from "@/lib/server/bounded-body";
import { jsonOf } from "@/lib/server/json-body";
import { requireSignedIn } from "@/lib/server/log/require-signed-in";
import { subscribe, unsubscribe } from "@/lib/server/push/subscriptions";

const MOST_BYTES = 8 * 1024;
const read = async (request: Request): Promise<unknown> =>
  jsonOf(await boundedBody(request, MOST_BYTES, () => tooLarge("subscription", MOST_BYTES)));

/** Notifies whoever is signed in, in this browser. The body is what the browser says of its subscription. */
export const POST = apiRoute(async (request: Request) => {
  const viewer = await requireSignedIn();
  await subscribe(viewer, pushSubscriptionInput.parse(await read(request)));
  return new Response(null, { status: 204 });
});

/** Ends it: `{"endpoint": "…"}`. */
export const DELETE = apiRoute(async (request: Request) => {
  const viewer = await requireSignedIn();
  await unsubscribe(viewer, pushUnsubscription.parse(await read(request)).endpoint);
  return new Response(null, { status: 204 });
});
