import "server-only";
import { lateDifference } from "@/lib/model/order/late-difference";
import type { LateDifference, LateWish, OrderItem } from "@/lib/model/order/order";
import { LATE_WISH_STATES } from "@/lib/model/order/order-words";
import { contentHash } from "../content-hash";
import { storedWord } from "../stored-word";
import type { RoundRow } from "./round-row";

interface Late {
  readonly lateWishes: readonly LateWish[];
  readonly lateDifferences: readonly LateDifference[];
}

/** The late wishes of an order, and what those that wait would change in it. */
export function lateOf(round: RoundRow, items: readonly OrderItem[], nameOf: (userId: string) => string): Late {
  const lateWishes = round.lateWishes.map(
    ({ id, userId, reason, letBy, state, itemId, item, amount, lockVersion }): LateWish => ({
      ...{ id, userId, userName: nameOf(userId), reason, letByName: nameOf(letBy), lockVersion },
      state: storedWord(LATE_WISH_STATES, state),
      wish: itemId === null || item === null || amount === null ? null : { itemId, itemName: item.name, amount },
    }),
  );
  return { lateWishes, lateDifferences: round.state === "locked" ? differencesOf(lateWishes, items) : [] };
}

function differencesOf(wishes: readonly LateWish[], items: readonly OrderItem[]): readonly LateDifference[] {
  return wishes.flatMap(({ id: wishId, userId, userName, state, wish }) => {
    const item = items.find((each) => each.id === wish?.itemId);
    if (state !== "wished" || wish === null || item === undefined) return [];
    const found = lateDifference(item, { userId, userName, amount: wish.amount });
    if (found === null) return [];
    const { before, after } = found;
    const fingerprint = Buffer.from(contentHash({ wishId, before, after })).toString("hex");
    return [{ wishId, itemId: item.id, fingerprint, before, after }];
  });
}
