import "server-only";
import type { Order, OrderDifference, OrderItem, OrderSummary } from "@/lib/model/order/order";
import { orderNeeds, type Held, type ThingNeeds } from "@/lib/model/order/order-needs";
import { nameKey, ORDER_STATES, thingKey } from "@/lib/model/order/order-words";
import { roleMay } from "@/lib/model/roles";
import { displayNames } from "../accounts/names";
import { contentHash } from "../content-hash";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { lockedItems, openItems } from "./assemble";
import { lateOf } from "./late-rows";
import { listOnHand } from "./on-hand";
import { findRound, SUMMARY, thingOf, type RoundRow } from "./round-row";
import { readOrderedSheets, sheetNeeds, type OrderedSheet } from "./sheet-needs";
import { substitutionsOf } from "./substitution-rows";

/** The orders of the space, the newest first; nothing for those who do not order. */
export async function listOrders(member: Member): Promise<readonly OrderSummary[]> {
  if (!roleMay(member.role, "order")) return [];
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.orderRound.findMany({ where: { spaceId }, select: SUMMARY, orderBy: [{ createdAt: "desc" }, { id: "asc" }] }),
  );
  return rows.map((row) => ({ ...row, state: storedWord(ORDER_STATES, row.state) }));
}

/** An order with what everybody needs; null where there is none, or for those who do not order. */
export async function findOrder(member: Member, id: string): Promise<Order | null> {
  if (!isRecordId(id) || !roleMay(member.role, "order")) return null;
  const { spaceId, userId } = member;
  const round = await inSpace(spaceId, userId, (tx) => findRound(tx, spaceId, id));
  return round === null ? null : toOrder(member, round, await readAround(member, round));
}

/** What lies outside of an order and decides what is needed. */
export interface Around {
  readonly sheets: readonly OrderedSheet[];
  readonly onHand: readonly Held[];
}

export async function readAround(member: Member, round: Pick<RoundRow, "sharedBrewId">): Promise<Around> {
  const [sheets, onHand] = await Promise.all([readOrderedSheets(member, round.sharedBrewId), listOnHand(member)]);
  return { sheets, onHand };
}

export async function toOrder(member: Member, round: RoundRow, around: Around): Promise<Order> {
  const isOpen = round.state === "open";
  const needs = needsNow(round, around, !isOpen);
  const nameOf = await displayNames(member, peopleOf(round, needs));
  const items = isOpen ? openItems(round, needs, nameOf) : lockedItems(round, nameOf);
  const { id, title, currency, closesAt, note, lockVersion, sharedBrew } = round;
  return {
    ...{ id, title, currency, closesAt, note, lockVersion, sharedBrew, items },
    state: storedWord(ORDER_STATES, round.state),
    fingerprint: fingerprintOf(items),
    wishes: round.items.flatMap(({ wants }) =>
      wants.map(({ itemId, userId, amount, lockVersion: version }) => ({
        itemId,
        userId,
        amount,
        lockVersion: version,
      })),
    ),
    substitutions: substitutionsOf(round, nameOf),
    events: round.events.map((event) => ({
      id: event.id,
      at: event.at,
      actorName: nameOf(event.actorId),
      text: event.text,
    })),
    differences: round.state === "locked" || round.state === "placed" ? differencesOf(items, needs, nameOf) : [],
    ...lateOf(round, items, nameOf),
    mayOrganise: roleMay(member.role, "organise"),
    mayOrder: roleMay(member.role, "order"),
  };
}

function needsNow(round: RoundRow, { sheets, onHand }: Around, withBegun: boolean): readonly ThingNeeds[] {
  const things = new Map(round.items.map((row) => [row.id, thingOf(row)]));
  const cellsPerPiece = new Map(
    round.items.flatMap(({ name, cellsPerPiece: cells }) => (cells === null ? [] : [[nameKey(name), cells] as const])),
  );
  return orderNeeds({
    sheets: sheetNeeds(sheets, { withBegun, cellsPerPiece }),
    wants: round.items.flatMap((row) =>
      row.wants.map(({ userId, amount }) => ({ userId, thing: thingOf(row), amount })),
    ),
    onHand,
    instead: round.items.flatMap((row) =>
      row.replaced.flatMap(({ state, userId, toItemId, ratio }) => {
        const to = things.get(toItemId);
        return state !== "agreed" || to === undefined
          ? []
          : [{ userId, from: thingOf(row), to, ratio: ratio.toNumber() }];
      }),
    ),
  });
}

function peopleOf(round: RoundRow, needs: readonly ThingNeeds[]): readonly string[] {
  return [
    ...needs.flatMap(({ members }) => members.map(({ userId }) => userId)),
    ...round.events.map(({ actorId }) => actorId),
    ...round.lateWishes.flatMap(({ userId, letBy }) => [userId, letBy]),
    ...round.items.flatMap(({ leftOverTo, shares, replaced }) => [
      ...(leftOverTo === null ? [] : [leftOverTo]),
      ...shares.flatMap(({ userId, handedBy }) => (handedBy === null ? [userId] : [userId, handedBy])),
      ...replaced.flatMap(({ userId, proposedBy }) => [userId, proposedBy]),
    ]),
  ];
}

/** What who locks an order must have seen: amounts, packs, prices, and who takes what is left over. */
function fingerprintOf(items: readonly OrderItem[]): string {
  const seen = items.map(({ id, offers, shares }) => ({
    id,
    offers: offers.map(({ size, priceMinor }) => [size, priceMinor]),
    shares: shares.map(({ userId, amount, extra }) => [userId, amount, extra]),
  }));
  return Buffer.from(contentHash(seen)).toString("hex");
}

/** Where the sheets and the stock ask for something else now than at the lock. */
function differencesOf(
  items: readonly OrderItem[],
  needs: readonly ThingNeeds[],
  nameOf: (userId: string) => string,
): readonly OrderDifference[] {
  const kept = new Map(
    items.flatMap((item) =>
      item.shares.map(({ userId, needed, onHand }) => [
        `${userId}/${thingKey(item)}`,
        { item, userId, atLock: needed - onHand },
      ]),
    ),
  );
  const now = needs.flatMap(({ thing, members }) =>
    members.map(({ userId, needed, onHand }): OrderDifference => {
      const key = `${userId}/${thingKey(thing)}`;
      const atLock = kept.get(key)?.atLock ?? 0;
      kept.delete(key);
      return { userId, userName: nameOf(userId), thing, atLock, now: needed - onHand };
    }),
  );
  const gone = [...kept.values()].map(({ item: { kind, name, unit }, userId, atLock }): OrderDifference => ({
    ...{ userId, userName: nameOf(userId), thing: { kind, name, unit }, atLock, now: 0 },
  }));
  return [...now, ...gone].filter(({ atLock, now: present }) => atLock !== present);
}
