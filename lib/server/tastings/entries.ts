import "server-only";
import {
  MOST_ENTRIES,
  type BeerEntered,
  type BrewsEntered,
  type EntryChosen,
  type EntryPlaced,
} from "@/lib/model/tasting/prepare";
import { AppError } from "../app-error";
import { JSON_NULL, toJson, type SpaceTransaction } from "../db";
import type { Member } from "../session";
import { drawBlindCodes } from "./blind-codes";
import { inDraft } from "./draft";
import { requireFlight } from "./flights";

/** States in which there is something to pour. */
export const POURABLE = ["in package", "closed"] as const;

interface Flight {
  readonly spaceId: string;
  readonly tastingId: string;
  readonly flightNo: number;
}

/** Enters brews of the club, each under a blind code of its own. */
export function enterBrews(member: Member, { flightNo, brewIds, ...seen }: BrewsEntered): Promise<void> {
  const { spaceId } = member;
  const flight = { spaceId, tastingId: seen.id, flightNo };
  return inDraft(member, seen, async (tx) => {
    await requireRoom(tx, flight, brewIds.length);
    const brews = await requireBrews(tx, flight, brewIds);
    const codes = await drawBlindCodes(tx, flight, brews.length);
    for (const [at, { id, brewerUserId }] of brews.entries()) {
      const entryNo = codes[at] ?? 0;
      await tx.tastingEntry.create({ data: { ...flight, entryNo } });
      await tx.tastingIdentity.create({
        data: { ...{ spaceId, tastingId: seen.id, entryNo, brewId: id, brewerUserId }, figures: JSON_NULL },
      });
    }
  });
}

/** Enters a beer from elsewhere, of which only its brewer's word is known. */
export function enterBeer(member: Member, input: BeerEntered): Promise<{ readonly entryNo: number }> {
  const { spaceId } = member;
  const { id: tastingId, flightNo, beerName, brewerName, figures } = input;
  return inDraft(member, input, async (tx) => {
    await requireRoom(tx, { spaceId, tastingId, flightNo }, 1);
    const [entryNo = 0] = await drawBlindCodes(tx, { spaceId, tastingId }, 1);
    await tx.tastingEntry.create({ data: { spaceId, tastingId, flightNo, entryNo } });
    await tx.tastingIdentity.create({
      data: {
        ...{ spaceId, tastingId, entryNo, beerName },
        brewerName: brewerName === "" ? null : brewerName,
        figures: toJson(figures),
      },
    });
    return { entryNo };
  });
}

/** Moves an entry to another flight, or says as which style it is judged. */
export function placeEntry(member: Member, { entryNo, flightNo, styleCode, ...seen }: EntryPlaced): Promise<void> {
  const { spaceId } = member;
  const within = { spaceId, tastingId: seen.id };
  return inDraft(member, seen, async (tx) => {
    const entry = await requireEntry(tx, { ...within, entryNo });
    if (entry.flightNo !== flightNo) await requireRoom(tx, { ...within, flightNo }, 1);
    await tx.tastingEntry.update({
      where: { spaceId_tastingId_entryNo: { ...within, entryNo } },
      data: { flightNo, styleCode },
    });
  });
}

export function removeEntry(member: Member, { entryNo, ...seen }: EntryChosen): Promise<void> {
  const key = { spaceId: member.spaceId, tastingId: seen.id, entryNo };
  return inDraft(member, seen, async (tx) => {
    await requireEntry(tx, key);
    await tx.tastingEntry.delete({ where: { spaceId_tastingId_entryNo: key } });
  });
}

async function requireEntry(
  tx: SpaceTransaction,
  key: { readonly spaceId: string; readonly tastingId: string; readonly entryNo: number },
): Promise<{ readonly flightNo: number }> {
  const entry = await tx.tastingEntry.findUnique({
    where: { spaceId_tastingId_entryNo: key },
    select: { flightNo: true },
  });
  if (entry === null) throw new AppError("NOT_FOUND", "There is no such entry in this tasting.");
  return entry;
}

async function requireRoom(tx: SpaceTransaction, flight: Flight, more: number): Promise<void> {
  const { kind } = await requireFlight(tx, flight);
  const present = await tx.tastingEntry.count({ where: flight });
  const most = kind === "scored" ? MOST_ENTRIES : 2;
  if (present + more <= most) return;
  const whatFor = kind === "scored" ? "A flight" : `A ${kind} test`;
  throw new AppError(
    "INVALID",
    `${whatFor} takes ${String(most)} entries, and this would make ${String(present + more)}.`,
  );
}

async function requireBrews(tx: SpaceTransaction, { spaceId, tastingId }: Flight, brewIds: readonly string[]) {
  const brews = await tx.brew.findMany({
    where: { spaceId, id: { in: [...brewIds] }, droppedAt: null },
    select: { id: true, title: true, brewerUserId: true, state: true },
  });
  if (brews.length !== new Set(brewIds).size) throw new AppError("NOT_FOUND", "There is no such brew here.");
  const early = brews.find(({ state }) => !POURABLE.some((each) => each === state));
  if (early !== undefined) {
    throw new AppError("CONFLICT", `${early.title} is ${early.state}; only what is in package can be poured.`);
  }
  const twice = await tx.tastingIdentity.findFirst({
    where: { spaceId, tastingId, brewId: { in: [...brewIds] } },
    select: { entryNo: true, brew: { select: { title: true } } },
  });
  if (twice !== null) {
    throw new AppError("CONFLICT", `${twice.brew?.title ?? "A brew"} is entered already, as ${String(twice.entryNo)}.`);
  }
  return brews;
}
