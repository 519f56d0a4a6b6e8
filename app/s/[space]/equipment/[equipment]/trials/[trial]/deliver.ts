import type { DeliveryAnswer } from "@/lib/model/trial/trial";
import type { TrialEntry } from "@/lib/model/trial/trial-entry";

export type Delivery =
  | { readonly ok: true; readonly answer: DeliveryAnswer }
  /** No answer, or one that a later try may better. */
  | { readonly ok: false; readonly why: string };

const NO_NETWORK = "There is no connection to the server.";

/** Sends entries to the server; without any it only asks what the trial has. */
export async function deliver(address: string, entries: readonly TrialEntry[]): Promise<Delivery> {
  try {
    const response = await fetch(address, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ entries }),
      signal: AbortSignal.timeout(20_000),
    });
    const body: unknown = await response.json().catch(() => null);
    if (response.ok && isAnswer(body)) return { ok: true, answer: body };
    return { ok: false, why: messageOf(body) ?? `The server answered ${String(response.status)}.` };
  } catch {
    return { ok: false, why: NO_NETWORK };
  }
}

function isAnswer(body: unknown): body is DeliveryAnswer {
  return typeof body === "object" && body !== null && "stored" in body && "refused" in body && "entries" in body;
}

function messageOf(body: unknown): string | null {
  const has = typeof body === "object" && body !== null && "message" in body;
  return has && typeof body.message === "string" ? body.message : null;
}
