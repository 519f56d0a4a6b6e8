import { filterOf } from "@/lib/model/summary/brew-filter";
import { askedOf, questionOf } from "@/lib/model/summary/question";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { optionalViewer, proveMember } from "@/lib/server/session";
import { listSummaries } from "@/lib/server/summaries/reads";
import { tidyResponse } from "@/lib/server/summaries/tidy-response";

interface ExportContext {
  readonly params: Promise<{ readonly space: string }>;
}

/** The brews of a question as tidy data: one row a brew and quantity, or one a reading. */
export const GET = apiRoute(async (request: Request, { params }: ExportContext) => {
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("UNAUTHENTICATED", "Sign in first.");
  const member = await proveMember(viewer, (await params).space);
  if (member === null) throw new AppError("NOT_FOUND", "There is no such club here.");
  const asked = askedOf(Object.fromEntries(new URL(request.url).searchParams));
  const brews = await listSummaries(member, filterOf(questionOf(asked)));
  return tidyResponse(member, brews, {
    rows: asked["rows"] === "readings" ? "readings" : "figures",
    format: asked["format"] === "json" ? "json" : "csv",
  });
});
