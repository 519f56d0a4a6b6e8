import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { listBrewDays } from "@/lib/server/calendar/brew-days";
import { calendarResponse } from "@/lib/server/calendar/respond";
import { requestFacts } from "@/lib/server/request-facts";
import { proveCalendarReader } from "@/lib/server/session";
import { takeTurn } from "@/lib/server/throttle";

interface FeedContext {
  readonly params: Promise<{ readonly token: string }>;
}

/** A calendar program asks a few times an hour; guessing an address of 256 bits would take many. */
const TURNS = { burst: 60, intervalS: 10 } as const;
const TOKEN = /^([\w-]{43})(?:\.ics)?$/;

/** The brew days of one member, for a calendar program that cannot sign in. */
export const GET = apiRoute(async (request: Request, { params }: FeedContext) => {
  const { ip } = requestFacts(request.headers, undefined);
  if (!(await takeTurn(`calendar:${ip}`, TURNS))) {
    return new Response("Too many requests", { status: 429, headers: { "retry-after": String(TURNS.intervalS) } });
  }
  const [, token] = TOKEN.exec((await params).token) ?? [];
  const reader = token === undefined ? null : await proveCalendarReader(token);
  if (reader === null) throw new AppError("NOT_FOUND", "There is no calendar here.");
  const events = await listBrewDays(reader);
  return calendarResponse({ name: `Brew days, ${reader.spaceName}`, fileName: "brew-days.ics", events });
});
