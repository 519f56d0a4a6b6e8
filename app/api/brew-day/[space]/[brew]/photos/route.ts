import { z } from "zod";
import { recordId } from "@/lib/model/written";

import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { mayAddTo } from "@/lib/server/log/require-writable";
import { requestMember } from "@/lib/server/log/request-member";
import { readPhoto } from "@/lib/server/photos/read-photo";
import { keepPhoto } from "@/lib/server/photos/writes";
import { takeTurn } from "@/lib/server/throttle";

interface BrewContext {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
}

const query = z.strictObject({ id: recordId });
/** A phone that was without a network sends what it has; unpacking pictures is the dearest work of this server. */
const TURNS = { burst: 40, intervalS: 3 } as const;

/** Takes a photo under the identifier that the phone gave it: `?id=…`, the picture as the body or as “photo” of a form. */
export const POST = apiRoute(async (request: Request, { params }: BrewContext) => {
  const { space, brew: brewId } = await params;
  const { id } = query.parse(Object.fromEntries(new URL(request.url).searchParams));
  const member = await requestMember(space);
  // Before the body is read: nobody sends megabytes in vain.
  await mayAddTo(member, brewId);
  if (!(await takeTurn(`photos:${member.userId}`, TURNS))) {
    throw new AppError("BUSY", "Photos: so many at once are not taken; the next one in a few seconds.");
  }
  const bytes = await readPhoto(request);
  const kept = await keepPhoto(member, { id, brewId, bytes });
  return Response.json(kept, {
    status: kept.outcome === "stored" ? 201 : 200,
    headers: { "cache-control": "no-store" },
  });
});
