import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { findDaySheet } from "@/lib/server/brews/day-sheet";
import { requestMember } from "@/lib/server/log/request-member";

interface BrewContext {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
}

/** The plan and the log of a brew, for a phone to keep. */
export const GET = apiRoute(async (_request: Request, { params }: BrewContext) => {
  const { space, brew } = await params;
  const sheet = await findDaySheet(await requestMember(space), brew);
  if (sheet === null) throw new AppError("NOT_FOUND", "There is no such brew here.");
  return Response.json(sheet, { headers: { "Cache-Control": "no-store" } });
});
