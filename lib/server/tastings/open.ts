import "server-only";
import { randomInt } from "node:crypto";
import { differenceOrders } from "@/lib/calc/judging";
import type { DraftSeen } from "@/lib/model/tasting/prepare";
import { flightObstacles } from "@/lib/model/tasting/prepare-obstacles";
import { flightOrders } from "@/lib/model/tasting/prepare-orders";
import { isDifferenceTest } from "@/lib/model/tasting/tasting";
import type { ForcedChoice } from "@/lib/calc/judging";
import { displayNames } from "../accounts/names";
import { AppError } from "../app-error";
import { inSpace, type SpaceTransaction } from "../db";
import { tell } from "../notices/writes";
import type { Member } from "../session";
import { drawBlindCodes } from "./blind-codes";
import { inDraft } from "./draft";
import { readFlightsKnown, type FlightRow } from "./flight-rows";

const MOST_SEED = 4_294_967_295;
const GLASSES = 3;

/**
 * Opens a tasting: from here on what is tasted, by whom and in which order stays as it is. Judges and pourers are told.
 */
export async function openTasting(member: Member, seen: DraftSeen): Promise<void> {
  const { spaceId, userId } = member;
  const within = { spaceId, tastingId: seen.id };
  // Asked before, because names are in the directory and a transaction is of one space.
  const panel = await inSpace(spaceId, userId, (tx) =>
    tx.tastingPanel.findMany({ where: within, select: { userId: true } }),
  );
  const nameOf = await displayNames(
    member,
    panel.map((row) => row.userId),
  );
  await inDraft(member, seen, async (tx) => {
    const { title, seed } = await tx.tasting.findUniqueOrThrow({
      where: { spaceId_id: { spaceId, id: seen.id } },
      select: { title: true, seed: true },
    });
    const flights = await readFlightsKnown(tx, within);
    refuseObstacles(flights, seed, nameOf);
    for (const flight of flights) {
      if (isDifferenceTest(flight.kind)) await pourGlasses(tx, within, flight, flight.kind);
      else await serve(tx, within, flight, seed);
    }
    await tx.tasting.update({
      where: { spaceId_id: { spaceId, id: seen.id } },
      data: { state: "open", openedAt: new Date() },
    });
    const told = flights.flatMap(({ judgeIds, pourerIds }) => [...judgeIds, ...pourerIds]);
    await tell(tx, member, told, { kind: "tasting opened", payload: { tastingId: seen.id, title, note: "" } });
  });
}

interface Within {
  readonly spaceId: string;
  readonly tastingId: string;
}

function refuseObstacles(flights: readonly FlightRow[], seed: number, nameOf: (userId: string) => string): void {
  if (flights.length === 0) throw new AppError("INVALID", "There is no flight yet; add one with entries and judges.");
  const obstacles = flights.flatMap((flight) => flightObstacles({ ...flight, seed }, nameOf));
  if (obstacles.length > 0) throw new AppError("INVALID", obstacles.join(" "));
}

async function serve(tx: SpaceTransaction, within: Within, flight: FlightRow, seed: number): Promise<void> {
  const served = flightOrders({ ...flight, seed });
  if (!served.ok) throw new Error(`a flight without obstacles is not served: ${served.reason}`);
  await tx.tastingServing.createMany({
    data: served.orders.flatMap(({ judgeId, entryNos }) =>
      entryNos.map((entryNo, at) => ({ ...within, flightNo: flight.flightNo, judgeId, position: at + 1, entryNo })),
    ),
  });
}

/**
 * Numbers the glasses of a difference test and says what each holds. The seed is drawn here and kept nowhere: from one
 * that a judge could read, the answers would follow.
 */
async function pourGlasses(
  tx: SpaceTransaction,
  within: Within,
  { flightNo, judgeIds, entries }: FlightRow,
  test: ForcedChoice,
): Promise<void> {
  const orders = differenceOrders({ test, assessors: judgeIds.length, seed: randomInt(MOST_SEED) });
  const codes = await drawBlindCodes(tx, within, GLASSES * judgeIds.length);
  const glasses = orders.flatMap((order, judge) =>
    order.map((beer, at) => ({
      position: at + 1,
      judgeId: judgeIds[judge] ?? "",
      glassNo: codes[GLASSES * judge + at] ?? 0,
      entryNo: entries[beer]?.entryNo ?? 0,
    })),
  );
  await tx.tastingGlass.createMany({
    data: glasses.map(({ position, judgeId, glassNo }) => ({ ...within, flightNo, judgeId, position, glassNo })),
  });
  await tx.tastingGlassKey.createMany({
    data: glasses.map(({ glassNo, entryNo }) => ({ ...within, glassNo, entryNo })),
  });
}
