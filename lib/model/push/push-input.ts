import { z } from "zod";

const BASE64URL = /^[A-Za-z0-9_-]+={0,2}$/;

/** Bytes as a browser writes them. */
function bytes(label: string, length: number): z.ZodType<Uint8Array<ArrayBuffer>> {
  return z.string({ error: `${label} is missing` }).transform((text, context) => {
    const decoded = BASE64URL.test(text) ? decode(text) : null;
    if (decoded?.length === length) return decoded;
    context.addIssue({ code: "custom", message: `${label} is not ${String(length)} bytes in base64url` });
    return z.NEVER;
  });
}

function decode(text: string): Uint8Array<ArrayBuffer> | null {
  try {
    const plain = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
    return Uint8Array.from(plain, (sign) => sign.charCodeAt(0));
  } catch {
    return null;
  }
}

const endpoint = z.url({ error: "Endpoint is not an address" }).max(1000, "Endpoint is longer than 1000 characters");

/** What a browser says of its subscription: `JSON.stringify(PushSubscription)`. */
export const pushSubscriptionInput = z.object({
  endpoint,
  keys: z.object({ p256dh: bytes("Key p256dh", 65), auth: bytes("Key auth", 16) }),
});
export type PushSubscriptionInput = z.output<typeof pushSubscriptionInput>;

export const pushUnsubscription = z.strictObject({ endpoint });

/** What the service worker is told; docs/push.md. */
export interface PushPayload {
  readonly title: string;
  readonly body: string;
  /** Path of the page that is opened. */
  readonly url: string;
  /** A later message with the same tag takes the place of an earlier one. */
  readonly tag: string;
}
