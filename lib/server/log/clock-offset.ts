import "server-only";
import type { Delivery } from "@/lib/model/log/delivery";

/** How far this clock is ahead of the device's, with half the way there and back for the way here. */
export function clockOffset({ sentAt, roundTripMs }: Delivery, receivedAt: Date): number {
  return Math.round(receivedAt.getTime() - Date.parse(sentAt) - roundTripMs / 2);
}
