import "server-only";
import { randomUUID } from "node:crypto";
import type { PushSubscriptionInput } from "@/lib/model/push/push-input";
import { directory } from "../db";
import type { Viewer } from "../session";
import { sha256 } from "../tokens";
import { requirePushEndpoint } from "./endpoint";

/** As many browsers as one person is notified in; the oldest gives way. */
const MOST_BROWSERS = 10;

/** Notifies the viewer in this browser from now on. Whoever used it before is no longer notified in it. */
export async function subscribe({ userId }: Viewer, { endpoint, keys }: PushSubscriptionInput): Promise<void> {
  const address = requirePushEndpoint(endpoint).href;
  const told = { userId, endpoint: address, p256dh: keys.p256dh, auth: keys.auth };
  await directory.$transaction(async (tx) => {
    const endpointHash = sha256(address);
    await tx.pushSubscription.upsert({
      where: { endpointHash },
      create: { id: randomUUID(), endpointHash, ...told },
      update: { ...told, createdAt: new Date() },
    });
    const older = await tx.pushSubscription.findMany({
      where: { userId },
      orderBy: [{ createdAt: "desc" }, { id: "asc" }],
      skip: MOST_BROWSERS,
      select: { id: true },
    });
    await tx.pushSubscription.deleteMany({ where: { id: { in: older.map(({ id }) => id) } } });
  });
}

/** Ends it, also where there is none. */
export async function unsubscribe({ userId }: Viewer, endpoint: string): Promise<void> {
  await directory.pushSubscription.deleteMany({ where: { userId, endpointHash: sha256(new URL(endpoint).href) } });
}
