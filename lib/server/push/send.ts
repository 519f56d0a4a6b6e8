import "server-only";
import { request as requestHttp } from "node:http";
import { request as requestHttps } from "node:https";
import { generateRequestDetails } from "web-push";
import type { PushPayload } from "@/lib/model/push/push-input";
import { environment } from "../environment";
import { requirePushEndpoint } from "./endpoint";
import type { PushKeys } from "./keys";
import { lookupPublic } from "./public-address";

export interface PushTarget {
  readonly endpoint: string;
  readonly p256dh: Uint8Array;
  readonly auth: Uint8Array;
}

/** "gone": the browser took its subscription back. "refused": it will never be taken. "later": another try may help. */
export type PushOutcome = "sent" | "gone" | "refused" | "later";

/** A timer that nobody heard for so long is no alarm any more; the push service need not keep it. */
const TTL_S = 600;
const PATIENCE_MS = 10_000;

/** Encrypts a message for one browser and hands it to its push service. */
export async function sendPush(target: PushTarget, payload: PushPayload, keys: PushKeys): Promise<PushOutcome> {
  const { endpoint, p256dh, auth } = target;
  const url = requirePushEndpoint(endpoint);
  const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString("base64url");
  const details = generateRequestDetails(
    { endpoint, keys: { p256dh: text(p256dh), auth: text(auth) } },
    JSON.stringify(payload),
    { TTL: TTL_S, urgency: "high", vapidDetails: { subject: environment.pushSubject, ...keys } },
  );
  try {
    return outcomeOf(await post(url, details.headers, details.body));
  } catch {
    // No connection, no answer in time, or an address that is not public: the next try will see.
    return "later";
  }
}

function outcomeOf(status: number): PushOutcome {
  if (status >= 200 && status < 300) return "sent";
  if (status === 404 || status === 410) return "gone";
  return status === 429 || status >= 500 ? "later" : "refused";
}

/** Follows no redirection and reads no answer but its status. */
function post(url: URL, headers: Readonly<Record<string, string | number>>, body: Buffer): Promise<number> {
  const start = url.protocol === "https:" ? requestHttps : requestHttp;
  const guard = environment.isPushLocal ? {} : { lookup: lookupPublic };
  return new Promise((answered, failed) => {
    const signal = AbortSignal.timeout(PATIENCE_MS);
    const request = start(url, { method: "POST", headers, signal, ...guard }, (response) => {
      response.destroy();
      answered(response.statusCode ?? 0);
    });
    request.on("error", failed);
    request.end(body);
  });
}
