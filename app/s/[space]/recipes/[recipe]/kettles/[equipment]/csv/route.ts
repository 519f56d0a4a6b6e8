import { intervals } from "@/lib/calc/ledger";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { csvResponse } from "@/lib/server/csv-response";
import { lotLabels } from "@/lib/server/lots/labels";
import { optionalViewer, proveMember } from "@/lib/server/session";
import { toldWay } from "@/lib/ui/kettles/kettle-figures";
import { readView } from "@/lib/ui/kettles/kettle-view";
import { wayWords } from "@/lib/ui/kettles/way-words";
import { sheetCsv } from "@/lib/ui/sheet/sheet-csv";
import { readSheet } from "../read-sheet";

interface CsvContext {
  readonly params: Promise<{ readonly space: string; readonly recipe: string; readonly equipment: string }>;
}

/** The sheet of one kettle as a table, in the reader's units: with its lots, along the way out that was chosen. */
export const GET = apiRoute(async (request: Request, { params }: CsvContext) => {
  const { space, recipe: recipeId, equipment: equipmentId } = await params;
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("UNAUTHENTICATED", "Sign in first.");
  const member = await proveMember(viewer, space);
  const { rev, volume } = readView(Object.fromEntries(new URL(request.url).searchParams));
  const sheet = member === null ? null : await readSheet(member, { recipeId, equipmentId, rev, volume });
  if (member === null || sheet === null) throw new AppError("NOT_FOUND", "There is no such sheet here.");
  const { revision, profile, chosen, choice } = sheet;
  if (chosen === null) {
    throw new AppError("CONFLICT", "The recipe does not fit this kettle: choose a way out first.");
  }
  const { recipe, ledger, way } = chosen;
  const { preferences } = member;
  const { equipment, ownerName } = profile;
  const rows = sheetCsv(
    {
      about: [
        ["Recipe", `${revision.title}, revision ${String(revision.rev)}`],
        ["Kettle", `${equipment.name} of ${ownerName}`],
        ["Way out", way === null ? "none: it fits" : wayWords(toldWay(way), preferences)],
      ],
      ...{ recipe, ledger },
      intervals: intervals({ recipe, equipment, ambient: revision.content.writtenOn.ambient }),
      lots: await lotLabels(member, choice.lots),
    },
    preferences,
  );
  return csvResponse(rows, `sheet-revision-${String(revision.rev)}-${profile.id.slice(0, 8)}.csv`);
});
