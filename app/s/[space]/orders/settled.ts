import "server-only";
import { revalidatePath } from "next/cache";
import type { OrderOutcome } from "@/lib/model/order/order-input";
import { AppError } from "@/lib/server/app-error";

/**
 * Shows the order anew after a write, and tells the second of two people that somebody else was quicker. Then nothing is
 * shown anew: it would take away the message, and what was typed.
 */
export function settled(space: string, orderId: string, outcome: OrderOutcome): void {
  if (!outcome.ok) {
    throw new AppError(
      "CONFLICT",
      "Somebody changed this since the page was opened, so nothing was written. Load the page again to see it as it is now.",
    );
  }
  revalidatePath(`/s/${space}/orders/${orderId}`, "layout");
}
