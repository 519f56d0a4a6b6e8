import "server-only";
import { createHash } from "node:crypto";
import { thingKey, type OrderThing } from "@/lib/model/order/order-words";

/**
 * The identifier of a thing in an order, made from its name: what only sheets name has an address before anything of it is
 * kept, and two people who keep it first keep the same.
 */
export function itemId(orderId: string, thing: OrderThing): string {
  const digits = createHash("sha256")
    .update(`${orderId}/${thingKey(thing)}`)
    .digest("hex");
  // Version 8 of RFC 9562: bits of one's own making.
  return [
    digits.slice(0, 8),
    digits.slice(8, 12),
    `8${digits.slice(13, 16)}`,
    `a${digits.slice(17, 20)}`,
    digits.slice(20, 32),
  ].join("-");
}
