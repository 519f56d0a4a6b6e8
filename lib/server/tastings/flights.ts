import "server-only";
import { MOST_FLIGHTS, type FlightChange, type FlightChosen, type NewFlight } from "@/lib/model/tasting/prepare";
import { FLIGHT_KINDS, isDifferenceTest, type FlightKind } from "@/lib/model/tasting/tasting";
import { AppError } from "../app-error";
import type { SpaceTransaction } from "../db";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { inDraft } from "./draft";

/** Adds what is tasted together: scored on sheets, or two beers that are told apart or not. */
export function addFlight(member: Member, flight: NewFlight): Promise<{ readonly flightNo: number }> {
  const { spaceId } = member;
  const { id: tastingId, title, kind } = flight;
  return inDraft(member, flight, async (tx) => {
    const last = await tx.tastingFlight.aggregate({ where: { spaceId, tastingId }, _max: { flightNo: true } });
    const flightNo = (last._max.flightNo ?? 0) + 1;
    if (flightNo > MOST_FLIGHTS)
      throw new AppError("INVALID", `A tasting has at most ${String(MOST_FLIGHTS)} flights.`);
    const palateLimit = isDifferenceTest(kind) ? null : flight.palateLimit;
    await tx.tastingFlight.create({ data: { spaceId, tastingId, flightNo, title, kind, palateLimit } });
    return { flightNo };
  });
}

export function changeFlight(member: Member, change: FlightChange): Promise<void> {
  const { spaceId } = member;
  const { id: tastingId, flightNo, title } = change;
  return inDraft(member, change, async (tx) => {
    const { kind } = await requireFlight(tx, { spaceId, tastingId, flightNo });
    await tx.tastingFlight.update({
      where: { spaceId_tastingId_flightNo: { spaceId, tastingId, flightNo } },
      data: { title, palateLimit: isDifferenceTest(kind) ? null : change.palateLimit },
    });
  });
}

/** Takes a flight out with its entries and its panel. */
export function removeFlight(member: Member, { flightNo, ...seen }: FlightChosen): Promise<void> {
  const within = { spaceId: member.spaceId, tastingId: seen.id, flightNo };
  return inDraft(member, seen, async (tx) => {
    await requireFlight(tx, within);
    await tx.tastingEntry.deleteMany({ where: within });
    await tx.tastingPanel.deleteMany({ where: within });
    await tx.tastingFlight.delete({ where: { spaceId_tastingId_flightNo: within } });
  });
}

export async function requireFlight(
  tx: SpaceTransaction,
  within: { readonly spaceId: string; readonly tastingId: string; readonly flightNo: number },
): Promise<{ readonly title: string; readonly kind: FlightKind }> {
  const flight = await tx.tastingFlight.findUnique({
    where: { spaceId_tastingId_flightNo: within },
    select: { title: true, kind: true },
  });
  if (flight === null) throw new AppError("NOT_FOUND", "There is no such flight in this tasting.");
  return { title: flight.title, kind: storedWord(FLIGHT_KINDS, flight.kind) };
}
