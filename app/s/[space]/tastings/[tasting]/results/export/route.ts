import { z } from "zod";
import { tidyRows, TIDY_COLUMNS } from "@/lib/model/tasting/results-tidy";
import { oneOf } from "@/lib/model/written";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { csvResponse } from "@/lib/server/csv-response";
import { requestMember } from "@/lib/server/log/request-member";
import { findTastingFacts } from "@/lib/server/tastings/results-read";
import { NO_SUCH_TASTING } from "@/lib/server/tastings/sheets-refusals";

interface ExportContext {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

const query = z.object({ format: oneOf("Format", ["csv", "json"]) });

/** All sheets of a revealed tasting as a file; before the reveal there is none. */
export const GET = apiRoute(async (request: Request, { params }: ExportContext) => {
  const { space, tasting } = await params;
  const { format } = query.parse(Object.fromEntries(new URL(request.url).searchParams));
  const facts = await findTastingFacts(await requestMember(space), tasting);
  if (facts === null) throw new AppError("NOT_FOUND", NO_SUCH_TASTING);
  const rows = tidyRows(facts);
  if (format === "csv") return csvResponse([TIDY_COLUMNS, ...rows], "tasting.csv");
  const records = rows.map((row) => Object.fromEntries(TIDY_COLUMNS.map((name, at) => [name, row[at] ?? null])));
  return Response.json(records, {
    headers: {
      "Content-Disposition": 'attachment; filename="tasting.json"',
      "Cache-Control": "no-store",
    },
  });
});
