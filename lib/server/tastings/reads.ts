import "server-only";
import { dayOf } from "@/lib/model/plain-day";
import {
  FLIGHT_KINDS,
  TASTING_STATES,
  type Flight,
  type RevealedEntry,
  type Tasting,
  type TastingSummary,
} from "@/lib/model/tasting/tasting";
import { displayNames } from "../accounts/names";
import { inSpace, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

// Neither the seed of the orders nor the number of changes is anything that others need.
const SUMMARY = { id: true, title: true, state: true, heldOn: true, stewardId: true } as const;

type NameOf = (userId: string) => string;

/** The tastings of the space, the newest first. */
export async function listTastings(member: Member): Promise<readonly TastingSummary[]> {
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.tasting.findMany({
      where: { spaceId },
      select: SUMMARY,
      orderBy: [{ createdAt: "desc" }, { id: "asc" }],
    }),
  );
  const nameOf = await displayNames(
    member,
    rows.map(({ stewardId }) => stewardId),
  );
  return rows.map((row) => toSummary(row, nameOf));
}

/**
 * A tasting as everybody of the club may see it. What an entry is comes with it after the reveal, and is not asked for
 * before.
 */
export async function findTasting(member: Member, id: string): Promise<Tasting | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const found = await inSpace(spaceId, userId, async (tx) => {
    const row = await tx.tasting.findUnique({ where: { spaceId_id: { spaceId, id } }, select: TASTING });
    if (row === null) return null;
    return { row, entries: row.state === "revealed" ? await readRevealed(tx, { spaceId, tastingId: id }) : null };
  });
  if (found === null) return null;
  const { row, entries } = found;
  const people = row.flights.flatMap(({ panel }) => panel.map((each) => each.userId));
  const brewers = (entries ?? []).flatMap(({ identity }) => identity?.brewerUserId ?? []);
  const nameOf = await displayNames(member, [row.stewardId, row.revealedBy ?? row.stewardId, ...people, ...brewers]);
  return {
    ...toSummary(row, nameOf),
    note: row.note,
    sharedBrew: row.sharedBrew,
    flights: row.flights.map((flight) => toFlight(flight, nameOf)),
    remindedAt: row.remindedAt,
    revealedAt: row.revealedAt,
    revealedByName: row.revealedBy === null ? null : nameOf(row.revealedBy),
    revealed: entries?.map((entry) => toRevealed(entry, nameOf)) ?? null,
  };
}

const TASTING = {
  ...SUMMARY,
  ...{ note: true, remindedAt: true, revealedAt: true, revealedBy: true },
  sharedBrew: { select: { id: true, title: true } },
  flights: {
    select: {
      ...{ flightNo: true, title: true, kind: true },
      panel: { select: { userId: true, part: true } },
    },
    orderBy: { flightNo: "asc" },
  },
} as const;

interface SummaryRow {
  readonly id: string;
  readonly title: string;
  readonly state: string;
  readonly heldOn: Date | null;
  readonly stewardId: string;
}

function toSummary({ id, title, state, heldOn, stewardId }: SummaryRow, nameOf: NameOf): TastingSummary {
  return {
    ...{ id, title, stewardId },
    state: storedWord(TASTING_STATES, state),
    heldOn: heldOn === null ? null : dayOf(heldOn),
    stewardName: nameOf(stewardId),
  };
}

interface FlightRow {
  readonly flightNo: number;
  readonly title: string;
  readonly kind: string;
  readonly panel: readonly { readonly userId: string; readonly part: string }[];
}

function toFlight({ panel, kind, ...flight }: FlightRow, nameOf: NameOf): Flight {
  const inPart = (part: string) =>
    panel
      .filter((each) => each.part === part)
      .map(({ userId }) => ({ userId, name: nameOf(userId) }))
      .sort((a, b) => a.name.localeCompare(b.name, "en"));
  return { ...flight, kind: storedWord(FLIGHT_KINDS, kind), judges: inPart("judge"), pourers: inPart("pourer") };
}

interface RevealedRow extends Pick<RevealedEntry, "entryNo" | "flightNo" | "styleCode"> {
  readonly identity: {
    readonly brewId: string | null;
    readonly brewerUserId: string | null;
    readonly beerName: string | null;
    readonly brewerName: string | null;
    readonly brew: { readonly title: string } | null;
  } | null;
}

function readRevealed(
  tx: SpaceTransaction,
  within: { readonly spaceId: string; readonly tastingId: string },
): Promise<readonly RevealedRow[]> {
  return tx.tastingEntry.findMany({
    where: within,
    select: {
      ...{ entryNo: true, flightNo: true, styleCode: true },
      identity: {
        select: {
          ...{ brewId: true, brewerUserId: true, beerName: true, brewerName: true },
          brew: { select: { title: true } },
        },
      },
    },
    orderBy: { entryNo: "asc" },
  });
}

function toRevealed({ identity, ...entry }: RevealedRow, nameOf: NameOf): RevealedEntry {
  const brewerId = identity?.brewerUserId ?? null;
  return {
    ...entry,
    beer: identity?.brew?.title ?? identity?.beerName ?? "",
    brewer: brewerId === null ? (identity?.brewerName ?? "") : nameOf(brewerId),
    brewId: identity?.brewId ?? null,
  };
}
