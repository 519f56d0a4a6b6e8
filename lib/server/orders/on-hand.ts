import "server-only";
import type { Held } from "@/lib/model/order/order-needs";
import type { OrderUnit } from "@/lib/model/order/order-words";
import { listLots } from "../lots/reads";
import type { Member } from "../session";

const IN_ORDER_UNITS: Readonly<Record<string, { readonly unit: OrderUnit; readonly factor: number }>> = {
  kg: { unit: "g", factor: 1000 },
  g: { unit: "g", factor: 1 },
  mL: { unit: "mL", factor: 1 },
  L: { unit: "mL", factor: 1000 },
  pcs: { unit: "pcs", factor: 1 },
};

/** What members have themselves, in the units of an order. The club's own stock is nobody's. */
export async function listOnHand(member: Member): Promise<readonly Held[]> {
  const lots = await listLots(member);
  return lots.flatMap(({ owner, isArchived, what: { kind }, name, unit, onHand }) => {
    const counted = IN_ORDER_UNITS[unit];
    if (owner === null || isArchived || counted === undefined || onHand <= 0) return [];
    return [{ userId: owner.id, thing: { kind, name, unit: counted.unit }, amount: onHand * counted.factor }];
  });
}
