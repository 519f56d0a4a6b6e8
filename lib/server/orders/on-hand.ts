import "server-only";
import { ORDER_KINDS, type OrderUnit } from "@/lib/model/order/order-words";
import type { Held } from "@/lib/model/order/order-needs";
import { inSpace } from "../db";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

const IN_ORDER_UNITS: Readonly<Record<string, { readonly unit: OrderUnit; readonly factor: number }>> = {
  kg: { unit: "g", factor: 1000 },
  g: { unit: "g", factor: 1 },
  mL: { unit: "mL", factor: 1 },
  L: { unit: "mL", factor: 1000 },
  pcs: { unit: "pcs", factor: 1 },
};

/** What members have themselves, in the units of an order. The club's own stock is nobody's. */
export async function listOnHand({ spaceId, userId }: Member): Promise<readonly Held[]> {
  const lots = await inSpace(spaceId, userId, (tx) =>
    tx.ingredientLot.findMany({
      where: { spaceId, archivedAt: null, ownerUserId: { not: null }, onHand: { gt: 0 } },
      select: { ownerUserId: true, kind: true, name: true, unit: true, onHand: true },
    }),
  );
  return lots.flatMap(({ ownerUserId, kind, name, unit, onHand }) => {
    const counted = IN_ORDER_UNITS[unit];
    if (ownerUserId === null || counted === undefined) return [];
    const thing = { kind: storedWord(ORDER_KINDS, kind), name, unit: counted.unit };
    return [{ userId: ownerUserId, thing, amount: onHand.toNumber() * counted.factor }];
  });
}
