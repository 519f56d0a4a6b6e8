import "server-only";
import { z } from "zod";
import type { BrewRegisterEntry } from "@/lib/model/brew-register";
import { currentReadings } from "@/lib/model/current-readings";
import { brewReadings } from "@/lib/model/log/brew-readings";
import { projectLog } from "@/lib/model/log/project-log";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { toEntries } from "../log/entries";
import { EVENT_COLUMNS, type EventRow } from "../log/event-row";
import type { Member } from "../session";
import { SUMMARY_COLUMNS, toSummary } from "./from-row";

const predictedOriginal = z.object({
  "fermenter.originalExtract": z
    .object({ value: z.number(), low80: z.number(), high80: z.number() })
    .optional()
    .transform((prediction) => prediction ?? null),
});

const MEASURED = "fermenter.originalExtract";

/** The batches of the space as a register has them: not begun first, then the latest begun; none that was dropped. */
export async function listRegister({ spaceId, userId }: Member): Promise<readonly BrewRegisterEntry[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({
      where: { spaceId, droppedAt: null },
      select: {
        ...SUMMARY_COLUMNS,
        predicted: true,
        events: {
          where: {
            OR: [
              { kind: "gravity", payload: { path: ["quantity"], equals: MEASURED } },
              { kind: "correct", payload: { path: ["measured", "quantity"], equals: MEASURED } },
              { kind: "void" },
            ],
          },
          select: EVENT_COLUMNS,
        },
      },
      orderBy: [{ startedAt: { sort: "desc", nulls: "first" } }, { id: "asc" }],
    }),
  );
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map((row) => row.brewerUserId),
  );
  return rows.map((row) => ({
    ...toSummary(row, nameOf),
    plannedOriginal: predictedOriginal.parse(row.predicted)["fermenter.originalExtract"],
    measuredOriginal: measuredIn(row, nameOf),
  }));
}

function measuredIn(
  { id, events }: { readonly id: string; readonly events: readonly EventRow[] },
  nameOf: (userId: string) => string,
): number | null {
  const { readings } = projectLog(toEntries(events, nameOf));
  return currentReadings(brewReadings(id, readings)).get(MEASURED)?.value ?? null;
}
