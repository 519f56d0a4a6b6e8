import { cookies } from "next/headers";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { sessionCookie } from "@/lib/server/auth";
import { liveStream } from "@/lib/server/live/live-stream";
import { readPlace } from "@/lib/server/live/new-entries";
import { hasBrew } from "@/lib/server/live/has-brew";
import { requestMember } from "@/lib/server/log/request-member";
import { NO_SUCH_BREW } from "@/lib/server/log/writable-brews";
import { proveMember, proveViewer } from "@/lib/server/session";
import { takeTurn } from "@/lib/server/throttle";

interface BrewContext {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
}

/** A phone between two cells comes again often; a page that was left open in a loop is slowed down. */
const TURNS = { burst: 60, intervalS: 2 } as const;

/** New entries of a brew's log as they come: `?since=` or Last-Event-ID say when the reader's last one was received. */
export const GET = apiRoute(async (request: Request, { params }: BrewContext) => {
  const { space, brew: brewId } = await params;
  const member = await requestMember(space);
  if (!(await hasBrew(member, brewId))) throw new AppError("NOT_FOUND", NO_SUCH_BREW);
  if (!(await takeTurn(`live:${member.userId}`, TURNS))) throw new AppError("BUSY", "Too many live views at once.");
  const reference = (await cookies()).get(sessionCookie())?.value ?? "";
  const told = request.headers.get("last-event-id") ?? new URL(request.url).searchParams.get("since");
  const stream = liveStream({
    key: { spaceId: member.spaceId, brewId },
    since: readPlace(told),
    // The session and the role of that moment, not of this one.
    mayLook: async () => {
      const viewer = await proveViewer(reference);
      return viewer !== null && (await proveMember(viewer, space)) !== null;
    },
    signal: request.signal,
  });
  // "no-transform", or compression would hold entries back until there are enough of them.
  const headers = { "cache-control": "no-cache, no-transform, private", "x-accel-buffering": "no" };
  return new Response(stream, { headers: { ...headers, "content-type": "text/event-stream; charset=utf-8" } });
});
