import { apiRoute } from "@/lib/server/api-route";
import { requireSignedIn } from "@/lib/server/log/require-signed-in";
import { pushKeys } from "@/lib/server/push/keys";

/** The public key that a browser subscribes to. */
export const GET = apiRoute(async () => {
  await requireSignedIn();
  const { publicKey } = await pushKeys();
  return Response.json({ publicKey }, { headers: { "cache-control": "private, max-age=3600" } });
});
