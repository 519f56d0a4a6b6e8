import type { DaySheet } from "@/lib/model/day-sheet";
import type { JudgeSheet } from "@/lib/model/tasting/judge-sheet";
import type { Post } from "./flush";

const TOO_LONG_MS = 15_000;
/** Somebody stands at the kettle and waits for the sheet that is on the phone already. */
const SHEET_TOO_LONG_MS = 4000;

/** Sends deliveries to one address. */
function postTo(address: string): Post {
  return async (delivery) => {
    const response = await fetch(address, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(delivery),
      signal: AbortSignal.timeout(TOO_LONG_MS),
    });
    return { status: response.status, body: await response.json().catch(() => null) };
  };
}

export const postDelivery = postTo("/api/log/ingest");
export const postSheets = postTo("/api/tastings/ingest");

export type Fetched<S> =
  { readonly kind: "sheet"; readonly sheet: S } | { readonly kind: "unreachable" | "signed out" | "not found" };
export type FetchedSheet = Fetched<DaySheet>;

export const fetchSheet = (space: string, brewId: string): Promise<FetchedSheet> => fetchOf("brew-day", space, brewId);

export const fetchJudgeSheet = (space: string, tastingId: string): Promise<Fetched<JudgeSheet>> =>
  fetchOf("tastings", space, tastingId);

async function fetchOf<S>(kind: string, space: string, id: string): Promise<Fetched<S>> {
  try {
    const path = `/api/${kind}/${encodeURIComponent(space)}/${encodeURIComponent(id)}`;
    // The answer says itself that it is not stored. Asked for in the plainest way, so that what the browser has asked
    // for on its own, at the first visit, is taken.
    const response = await fetch(path, { signal: AbortSignal.timeout(SHEET_TOO_LONG_MS) });
    if (response.status === 401) return { kind: "signed out" };
    if (response.status === 404) return { kind: "not found" };
    if (!response.ok) return { kind: "unreachable" };
    return { kind: "sheet", sheet: (await response.json()) as S };
  } catch {
    return { kind: "unreachable" };
  }
}
