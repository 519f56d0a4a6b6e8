import { intervals } from "@/lib/calc/ledger";
import { listAdaptations } from "@/lib/server/adaptations/reads";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { csvResponse } from "@/lib/server/csv-response";
import { listBrewLots } from "@/lib/server/lots/brew-lots";
import { lotLabels } from "@/lib/server/lots/labels";
import { optionalViewer, proveMember, type Member } from "@/lib/server/session";
import { findSheet, type KettleSheet } from "@/lib/server/shared-brews/find-sheet";
import { toldWay } from "@/lib/ui/kettles/kettle-figures";
import { wayWords } from "@/lib/ui/kettles/way-words";
import { sheetCsv } from "@/lib/ui/sheet/sheet-csv";

interface CsvContext {
  readonly params: Promise<{ readonly space: string; readonly sharedBrew: string; readonly equipment: string }>;
}

/** A member's sheet of a shared brew as a table, under the rules of its plan; of a planned brew its own. */
export const GET = apiRoute(async (_request: Request, { params }: CsvContext) => {
  const { space, sharedBrew: sharedBrewId, equipment: equipmentId } = await params;
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("UNAUTHENTICATED", "Sign in first.");
  const member = await proveMember(viewer, space);
  const sheet = member === null ? null : await findSheet(member, { sharedBrewId, equipmentId });
  if (member === null || sheet === null) throw new AppError("NOT_FOUND", "There is no such sheet here.");
  const { planned, profile, revision, brewed, adapted } = sheet;
  if (brewed === null) throw new AppError("CONFLICT", "No grist reaches the strength of the plan on this kettle.");
  const { recipe, ledger } = brewed;
  const way = adapted.chosen?.way ?? null;
  const { equipment, ownerName } = profile;
  const rows = sheetCsv(
    {
      about: [
        ["Shared brew", `${planned.title}, version ${String(planned.version)} of the plan`],
        ["Recipe", `${revision.title}, revision ${String(revision.rev)}`],
        ["Kettle", `${equipment.name} of ${ownerName}`],
        ["Way out", way === null ? "none" : wayWords(toldWay(way), member.preferences)],
      ],
      ...{ recipe, ledger },
      intervals: intervals({ recipe, equipment, ambient: revision.content.writtenOn.ambient }),
      lots: await lotsOf(member, sheet),
    },
    member.preferences,
  );
  return csvResponse(rows, `shared-sheet-${profile.id.slice(0, 8)}.csv`);
});

/** What the brew took, or what its brewer chose as long as there is none. */
async function lotsOf(member: Member, sheet: KettleSheet): Promise<ReadonlyMap<string, string>> {
  const { participant, revision, profile } = sheet;
  const brewId = participant?.brew?.id ?? null;
  if (brewId !== null) {
    return new Map((await listBrewLots(member, brewId)).map(({ path, label }) => [path, label]));
  }
  const adaptations = await listAdaptations(member, { recipeId: revision.id, rev: revision.rev });
  return lotLabels(member, adaptations.get(profile.id)?.choice.lots ?? {});
}
