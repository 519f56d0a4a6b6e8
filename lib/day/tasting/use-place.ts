import { useEffect, useSyncExternalStore } from "react";

/** What of the tasting is on the screen: the list, the sheet of an entry, or the glasses of a flight. */
export type Place =
  | { readonly kind: "list" }
  | { readonly kind: "entry"; readonly flightNo: number; readonly entryNo: number }
  | { readonly kind: "glasses"; readonly flightNo: number };

export const entryHash = (flightNo: number, entryNo: number): string => `#${String(flightNo)}-${String(entryNo)}`;
export const glassesHash = (flightNo: number): string => `#${String(flightNo)}`;

function placeOf(hash: string): Place {
  const [, flight, entry] = /^#(\d{1,2})(?:-(\d{3}))?$/.exec(hash) ?? [];
  if (flight === undefined) return { kind: "list" };
  const flightNo = Number(flight);
  return entry === undefined ? { kind: "glasses", flightNo } : { kind: "entry", flightNo, entryNo: Number(entry) };
}

function onHash(listener: () => void): () => void {
  addEventListener("hashchange", listener);
  return () => removeEventListener("hashchange", listener);
}

/** The place as the address says it, so that the way back is the browser's own. */
export function usePlace(): Place {
  const hash = useSyncExternalStore(onHash, () => location.hash);
  useEffect(() => {
    scrollTo(0, 0);
    document.getElementById("content")?.focus({ preventScroll: true });
  }, [hash]);
  return placeOf(hash);
}
