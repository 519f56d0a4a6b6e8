import type { DaySheet } from "@/lib/model/day-sheet";
import type { Post } from "./flush";

const TOO_LONG_MS = 15_000;
/** Somebody stands at the kettle and waits for the sheet that is on the phone already. */
const SHEET_TOO_LONG_MS = 4000;

export const postDelivery: Post = async (delivery) => {
  const response = await fetch("/api/log/ingest", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(delivery),
    signal: AbortSignal.timeout(TOO_LONG_MS),
  });
  return { status: response.status, body: await response.json().catch(() => null) };
};

export type FetchedSheet =
  { readonly kind: "sheet"; readonly sheet: DaySheet } | { readonly kind: "unreachable" | "signed out" | "not found" };

export async function fetchSheet(space: string, brewId: string, patience = SHEET_TOO_LONG_MS): Promise<FetchedSheet> {
  try {
    const path = `/api/brew-day/${encodeURIComponent(space)}/${encodeURIComponent(brewId)}`;
    const response = await fetch(path, { cache: "no-store", signal: AbortSignal.timeout(patience) });
    if (response.status === 401) return { kind: "signed out" };
    if (response.status === 404) return { kind: "not found" };
    if (!response.ok) return { kind: "unreachable" };
    return { kind: "sheet", sheet: (await response.json()) as DaySheet };
  } catch {
    return { kind: "unreachable" };
  }
}
