import "server-only";
import { z } from "zod";
import type { BrewState, Predictions } from "@/lib/model/brew";
import { beerFigures } from "@/lib/model/tasting/prepare";
import { figuresOfBeer, figuresOfBrew, type BeerFigure } from "@/lib/model/tasting/prepare-figures";
import { flightObstacles } from "@/lib/model/tasting/prepare-obstacles";
import { flightOrders, ownEntries, type FlightOrders } from "@/lib/model/tasting/prepare-orders";
import { isDifferenceTest, type FlightKind, type PanelPerson } from "@/lib/model/tasting/tasting";
import { displayNames } from "../accounts/names";
import { inSpace, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { listSummaries } from "../summaries/reads";
import { readFlightsKnown, type FlightRow } from "./flight-rows";

const predictions = z.custom<Predictions>((value) => typeof value === "object" && value !== null);

/** An entry as its steward knows it. */
export interface KnownEntry {
  readonly entryNo: number;
  readonly flightNo: number;
  readonly styleCode: string | null;
  readonly beer: string;
  readonly brewer: string;
  /** null for a beer from elsewhere. */
  readonly brewId: string | null;
  readonly brewState: BrewState | null;
  readonly figures: readonly BeerFigure[];
}

export interface PreparedJudge extends PanelPerson {
  /** Entries of the flight that are this judge's own. */
  readonly own: readonly number[];
}

export interface PreparedFlight {
  readonly flightNo: number;
  readonly title: string;
  readonly kind: FlightKind;
  readonly palateLimit: number | null;
  readonly entries: readonly KnownEntry[];
  readonly judges: readonly PreparedJudge[];
  readonly pourers: readonly PanelPerson[];
  /** Of a scored flight; of a test the glasses are numbered when it is opened. */
  readonly orders: FlightOrders | null;
  /** What keeps it from being opened, in words. */
  readonly obstacles: readonly string[];
}

export interface Preparation {
  readonly id: string;
  readonly lockVersion: number;
  readonly flights: readonly PreparedFlight[];
}

/** All that the steward of a tasting knows of it; nobody else is given it, whatever the state. */
export async function findPreparation(member: Member, id: string): Promise<Preparation | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const found = await inSpace(spaceId, userId, (tx) => readKnown(tx, { spaceId, tastingId: id }, userId));
  if (found === null) return null;
  const { tasting, flights, entries } = found;
  const brewIds = entries.flatMap(({ identity }) => identity?.brewId ?? []);
  const summaries = brewIds.length === 0 ? [] : await listSummaries(member, { ids: brewIds });
  const nameOf = await displayNames(member, [
    ...flights.flatMap(({ judgeIds, pourerIds }) => [...judgeIds, ...pourerIds]),
    ...entries.flatMap(({ identity }) => identity?.brewerUserId ?? []),
  ]);
  const brews = new Map(summaries.map((brew) => [brew.id, brew]));
  const known = entries.map(({ identity, ...entry }): KnownEntry => {
    const brew = brews.get(identity?.brewId ?? "");
    const brewerId = identity?.brewerUserId ?? null;
    const stated = identity?.figures ?? null;
    return {
      ...entry,
      beer: identity?.brew?.title ?? identity?.beerName ?? "",
      brewer: brewerId === null ? (identity?.brewerName ?? "") : nameOf(brewerId),
      brewId: identity?.brewId ?? null,
      brewState: brew?.state ?? null,
      figures:
        stated === null
          ? figuresOfBrew(brew?.summary ?? null, predictions.parse(identity?.brew?.predicted ?? {}))
          : figuresOfBeer(beerFigures.parse(stated)),
    };
  });
  return { ...tasting, flights: flights.map((flight) => prepared(flight, found.seed, known, nameOf)) };
}

function prepared(
  flight: FlightRow,
  seed: number,
  known: readonly KnownEntry[],
  nameOf: (userId: string) => string,
): PreparedFlight {
  const { flightNo, title, kind, palateLimit, entries, judgeIds, pourerIds } = flight;
  const person = (userId: string): PanelPerson => ({ userId, name: nameOf(userId) });
  return {
    ...{ flightNo, title, kind, palateLimit },
    entries: known.filter((entry) => entry.flightNo === flightNo),
    judges: judgeIds.map((userId) => ({ ...person(userId), own: ownEntries(entries, userId) })).sort(byName),
    pourers: pourerIds.map(person).sort(byName),
    orders: isDifferenceTest(kind) ? null : flightOrders({ ...flight, seed }),
    obstacles: flightObstacles({ ...flight, seed }, nameOf),
  };
}

const byName = (a: PanelPerson, b: PanelPerson): number => a.name.localeCompare(b.name, "en");

async function readKnown(
  tx: SpaceTransaction,
  within: { readonly spaceId: string; readonly tastingId: string },
  userId: string,
) {
  const { spaceId, tastingId } = within;
  const row = await tx.tasting.findUnique({
    where: { spaceId_id: { spaceId, id: tastingId } },
    select: { id: true, lockVersion: true, seed: true, stewardId: true },
  });
  if (row?.stewardId !== userId) return null;
  const entries = await tx.tastingEntry.findMany({
    where: within,
    select: {
      ...{ entryNo: true, flightNo: true, styleCode: true },
      identity: {
        select: {
          ...{ brewId: true, brewerUserId: true, beerName: true, brewerName: true, figures: true },
          brew: { select: { title: true, predicted: true } },
        },
      },
    },
    orderBy: { entryNo: "asc" },
  });
  const { id, lockVersion, seed } = row;
  return { tasting: { id, lockVersion }, seed, entries, flights: await readFlightsKnown(tx, within) };
}
