import "server-only";
import type { FlightToServe } from "@/lib/model/tasting/prepare-orders";
import { FLIGHT_KINDS, type FlightKind } from "@/lib/model/tasting/tasting";
import type { SpaceTransaction } from "../db";
import { storedWord } from "../stored-word";

export interface FlightRow extends Omit<FlightToServe, "seed"> {
  readonly flightNo: number;
  readonly title: string;
  readonly kind: FlightKind;
  readonly pourerIds: readonly string[];
}

/** The flights with what is known of their entries; the database gives it to the steward, and after the reveal to all. */
export async function readFlightsKnown(
  tx: SpaceTransaction,
  within: { readonly spaceId: string; readonly tastingId: string },
): Promise<readonly FlightRow[]> {
  const rows = await tx.tastingFlight.findMany({
    where: within,
    select: {
      ...{ flightNo: true, title: true, kind: true, palateLimit: true },
      panel: { select: { userId: true, part: true }, orderBy: { userId: "asc" } },
      entries: {
        select: {
          entryNo: true,
          identity: {
            select: { brewerUserId: true, brew: { select: { collaborators: { select: { userId: true } } } } },
          },
        },
        orderBy: { entryNo: "asc" },
      },
    },
    orderBy: { flightNo: "asc" },
  });
  return rows.map(({ kind, panel, entries, ...flight }) => ({
    ...flight,
    kind: storedWord(FLIGHT_KINDS, kind),
    judgeIds: panel.flatMap(({ userId, part }) => (part === "judge" ? [userId] : [])),
    pourerIds: panel.flatMap(({ userId, part }) => (part === "pourer" ? [userId] : [])),
    entries: entries.map(({ entryNo, identity }) => ({
      entryNo,
      brewerIds: [
        ...[identity?.brewerUserId ?? []].flat(),
        ...(identity?.brew?.collaborators ?? []).map(({ userId }) => userId),
      ],
    })),
  }));
}
