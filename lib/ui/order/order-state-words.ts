import type { OrderState } from "@/lib/model/order/order-words";

/** What each state of an order means for who reads it. */
export const ORDER_STATE_WORDS: Readonly<Record<OrderState, string>> = {
  open: "Open: sheets and wishes count as they are at this moment.",
  locked: "Locked: the amounts stay as they are, whatever changes in the sheets.",
  placed: "Placed with the supplier; what comes is noted item by item.",
  received: "Received; it is handed out by the weight list.",
  "handed out": "Handed out: everybody has theirs.",
  cancelled: "Cancelled: nothing is bought.",
};
