import { dayWorker } from "@/lib/server/day-files/read";

/** The worker of the brew day. A browser looks for a newer one at each visit. */
export async function GET(): Promise<Response> {
  return new Response(new Uint8Array(await dayWorker()), {
    headers: { "content-type": "text/javascript; charset=utf-8", "cache-control": "no-cache" },
  });
}
