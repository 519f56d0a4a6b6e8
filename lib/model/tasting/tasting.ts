import type { ForcedChoice } from "@/lib/calc/judging";

/** What a tasting goes through, in this order and never back. */
export const TASTING_STATES = ["draft", "open", "closed", "revealed"] as const;
export type TastingState = (typeof TASTING_STATES)[number];

export const TASTING_STATE_WORDS: Readonly<Record<TastingState, string>> = {
  draft: "being prepared",
  open: "open for judging",
  closed: "closed",
  revealed: "revealed",
};

export const FLIGHT_KINDS = ["scored", "triangle", "duo-trio"] as const;
export type FlightKind = (typeof FLIGHT_KINDS)[number];

export const FLIGHT_KIND_WORDS: Readonly<Record<FlightKind, string>> = {
  scored: "scored on sheets",
  triangle: "triangle test",
  "duo-trio": "duo-trio test",
};

/** Whether a flight asks if two beers can be told apart, rather than how good they are. */
export function isDifferenceTest(kind: FlightKind): kind is ForcedChoice {
  return kind !== "scored";
}

/** One tasting in a list, as everybody of the club may see it at any time. */
export interface TastingSummary {
  readonly id: string;
  readonly title: string;
  readonly state: TastingState;
  /** The day on which it is tasted, "2027-03-14". */
  readonly heldOn: string | null;
  readonly stewardId: string;
  readonly stewardName: string;
}

export interface PanelPerson {
  readonly userId: string;
  readonly name: string;
}

/** A flight as everybody may see it: who serves and who judges, never what. */
export interface Flight {
  readonly flightNo: number;
  readonly title: string;
  readonly kind: FlightKind;
  readonly judges: readonly PanelPerson[];
  readonly pourers: readonly PanelPerson[];
}

/** What an entry turned out to be. */
export interface RevealedEntry {
  readonly entryNo: number;
  readonly flightNo: number;
  readonly styleCode: string | null;
  readonly beer: string;
  readonly brewer: string;
  /** null for a beer from elsewhere. */
  readonly brewId: string | null;
}

export interface Tasting extends TastingSummary {
  readonly note: string;
  readonly sharedBrew: { readonly id: string; readonly title: string } | null;
  readonly flights: readonly Flight[];
  /** When judges with missing sheets were last reminded of them. */
  readonly remindedAt: Date | null;
  readonly revealedAt: Date | null;
  readonly revealedByName: string | null;
  /** By blind code; null before the reveal. */
  readonly revealed: readonly RevealedEntry[] | null;
}

/**
 * Where a judge writes. Which entry is opened stands behind the hash, which no server is sent; of the entry it has the code
 * alone.
 */
export function judgingPath(
  space: string,
  tastingId: string,
  entry: { readonly flightNo: number; readonly entryNo: number } | null = null,
): string {
  const hash = entry === null ? "" : `#${String(entry.flightNo)}-${String(entry.entryNo)}`;
  return `/judging/${space}/${tastingId}${hash}`;
}
