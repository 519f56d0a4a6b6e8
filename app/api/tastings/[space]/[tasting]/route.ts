import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { requestMember } from "@/lib/server/log/request-member";
import { findJudgeSheet } from "@/lib/server/tastings/sheets-read";
import { NO_SUCH_TASTING } from "@/lib/server/tastings/sheets-refusals";

interface TastingContext {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

/** What a judge is served and has written so far, for a device to keep. */
export const GET = apiRoute(async (_request: Request, { params }: TastingContext) => {
  const { space, tasting } = await params;
  const sheet = await findJudgeSheet(await requestMember(space, "tasting"), tasting);
  if (sheet === null) throw new AppError("NOT_FOUND", NO_SUCH_TASTING);
  return Response.json(sheet, { headers: { "Cache-Control": "no-store" } });
});
