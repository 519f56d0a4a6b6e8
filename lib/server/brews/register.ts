import "server-only";
import { z } from "zod";
import type { BrewRegisterEntry } from "@/lib/model/brew-register";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { EVENT_COLUMNS, toReading } from "../readings/from-event";
import type { Member } from "../session";
import { SUMMARY_COLUMNS, toSummary } from "./from-row";

const predictedOriginal = z.object({
  "fermenter.originalExtract": z
    .object({ value: z.number(), low80: z.number(), high80: z.number() })
    .optional()
    .transform((prediction) => prediction ?? null),
});

/** The batches of the space as a register has them: not begun first, then the latest begun; none that was dropped. */
export async function listRegister({ spaceId, userId }: Member): Promise<readonly BrewRegisterEntry[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({
      where: { spaceId, droppedAt: null },
      select: {
        ...SUMMARY_COLUMNS,
        predicted: true,
        events: {
          where: { kind: "gravity", payload: { path: ["quantity"], equals: "fermenter.originalExtract" } },
          select: EVENT_COLUMNS,
          // The last reading given is the one that counts.
          orderBy: [{ receivedAt: "desc" }, { deviceSeq: "desc" }],
          take: 1,
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
    measuredOriginal: row.events.flatMap((event) => toReading(event, nameOf) ?? [])[0]?.value ?? null,
  }));
}
