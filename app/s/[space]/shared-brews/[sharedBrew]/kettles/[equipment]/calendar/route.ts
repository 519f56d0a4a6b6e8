import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { findBrewDay } from "@/lib/server/calendar/brew-days";
import { calendarResponse } from "@/lib/server/calendar/respond";
import { requireMember } from "@/lib/server/session";

interface BrewDayContext {
  readonly params: Promise<{ readonly space: string; readonly sharedBrew: string; readonly equipment: string }>;
}

export const GET = apiRoute(async (_request: Request, { params }: BrewDayContext) => {
  const { space, sharedBrew, equipment } = await params;
  const member = await requireMember(space);
  const event = await findBrewDay(member, { sharedBrewId: sharedBrew, equipmentId: equipment });
  if (event === null) throw new AppError("NOT_FOUND", "There is no brew day here.");
  return calendarResponse({ name: event.summary, fileName: "brew-day.ics", events: [event] });
});
