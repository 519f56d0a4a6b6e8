import { csvChoices } from "@/lib/model/cellar/csv/columns";
import { CSV_LIMITS } from "@/lib/model/cellar/csv/table";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { importReadings } from "@/lib/server/cellar/import-readings";
import { readUpload } from "@/lib/server/exchange/read-upload";
import { mayAddTo } from "@/lib/server/log/require-writable";
import { requestMember } from "@/lib/server/log/request-member";

interface BrewContext {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
}

export const POST = apiRoute(async (request: Request, { params }: BrewContext) => {
  const { space, brew: brewId } = await params;
  // Before the body is read: nobody sends megabytes in vain.
  const member = await requestMember(space);
  await mayAddTo(member, brewId);
  const { bytes, fields } = await readUpload(request, CSV_LIMITS.bytes);
  const choices = csvChoices.parse(jsonOf(fields["choices"] ?? ""));
  const imported = await importReadings(member, { brewId, text: new TextDecoder().decode(bytes), choices });
  return Response.json(imported, { status: 201, headers: { "Cache-Control": "no-store" } });
});

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new AppError("INVALID", "How the file is to be read is missing.", { cause });
  }
}
