import "server-only";
import type { Order } from "@/lib/model/order/order";
import { SUBSTITUTION_STATES } from "@/lib/model/order/order-words";
import { storedWord } from "../stored-word";
import { thingOf, type RoundRow } from "./round-row";

type NameOf = (userId: string) => string;

export function substitutionsOf(round: RoundRow, nameOf: NameOf): Order["substitutions"] {
  const things = new Map(round.items.map((row) => [row.id, thingOf(row)]));
  return round.items.flatMap((row) =>
    row.replaced.flatMap(({ id, userId, toItemId, ratio, proposedBy, state, decidedAt, lockVersion }) => {
      const to = things.get(toItemId);
      if (to === undefined) return [];
      return [
        {
          ...{
            id,
            userId,
            userName: nameOf(userId),
            from: thingOf(row),
            to,
            ratio: ratio.toNumber(),
            decidedAt,
            lockVersion,
          },
          proposedByName: nameOf(proposedBy),
          state: storedWord(SUBSTITUTION_STATES, state),
        },
      ];
    }),
  );
}
