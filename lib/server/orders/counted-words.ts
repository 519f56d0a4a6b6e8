import "server-only";
import type { OrderUnit } from "@/lib/model/order/order-words";

/** A whole amount as the history of an order tells it, to whoever reads it: "12.4 kg", "150 pcs". */
export function countedWords(amount: number, unit: OrderUnit): string {
  return unit === "g" && amount >= 1000 ? `${String(amount / 1000)} kg` : `${String(amount)} ${unit}`;
}
