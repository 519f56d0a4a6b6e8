import "server-only";
import { revalidatePath } from "next/cache";
import type { OrderOutcome } from "@/lib/model/order/order-input";
import { AppError } from "@/lib/server/app-error";

/** Shows the order anew after a write, and tells the second of two people that somebody else was quicker. */
export function settled(space: string, orderId: string, outcome: OrderOutcome): void {
  revalidatePath(`/s/${space}/orders/${orderId}`, "layout");
  if (!outcome.ok) {
    throw new AppError(
      "CONFLICT",
      "Somebody changed this since the page was opened. Nothing was written; the page shows it as it is now.",
    );
  }
}
