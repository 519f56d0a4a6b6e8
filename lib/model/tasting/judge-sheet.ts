import { inOrder, type LogEntry } from "../log/log-entry";
import type { Preferences } from "../preferences";
import type { Choice, Sheet } from "./sheet";
import type { ChoiceMade, SheetSaved, TastingEvent, TastingStamp } from "./sheet-event";

/** An event of a tasting with what is known of it. */
export type TastingEntry = LogEntry<TastingEvent>;

/** An entry that a judge tastes: a number, and the style that it is judged as. */
export interface ServedEntry {
  readonly entryNo: number;
  /** Code and name, as "18B American Pale Ale"; null without a style. */
  readonly style: string | null;
}

/** What a judge is served in one flight, in the order of tasting. */
export interface ServedFlight {
  readonly flightNo: number;
  readonly title: string;
  readonly kind: "scored" | "triangle" | "duo-trio";
  /** Of a scored flight. */
  readonly entries: readonly ServedEntry[];
  /** Of a triangle or duo-trio: the numbers of the three glasses, of which a duo-trio's first is the reference. */
  readonly glasses: readonly number[];
}

/** Everything that a judge's device needs to judge without the server; nothing in it says what an entry is. */
export interface JudgeSheet {
  readonly space: { readonly slug: string; readonly name: string };
  readonly me: { readonly id: string; readonly name: string };
  readonly preferences: Preferences;
  readonly tasting: {
    readonly id: string;
    readonly title: string;
    readonly state: "draft" | "open" | "closed" | "revealed";
  };
  readonly flights: readonly ServedFlight[];
  /** What counts of the judge's own writing, so far as the server has it. */
  readonly entries: readonly TastingEntry[];
  /** ISO 8601, by the server's clock. */
  readonly readAt: string;
}

type EntryOf<C> = LogEntry<TastingStamp & C>;

/** How one sheet or one choice stands. */
export interface Standing<C, P> {
  /** What it says now; null before anything was written. */
  readonly payload: P | null;
  /** Of what counts: the last that was handed in, even where a change was begun since and not handed in. */
  readonly handedIn: P | null;
  readonly isHandedIn: boolean;
  readonly last: EntryOf<C> | null;
}

/**
 * The one that counts of several saves of the same sheet: the last one of a device by its own count, and between devices
 * the later one. The earlier ones stay.
 */
export function lastOf<E extends TastingEntry>(entries: readonly E[]): E | null {
  const byDevice = new Map<string, E>();
  for (const entry of entries) {
    const { deviceId, deviceSeq } = entry.event;
    const known = byDevice.get(deviceId);
    if (known === undefined || (deviceSeq ?? 0) > (known.event.deviceSeq ?? 0)) byDevice.set(deviceId, entry);
  }
  return [...byDevice.values()].sort(inOrder).at(-1) ?? null;
}

/** How the sheet of one entry stands. */
export function sheetStanding(entries: readonly TastingEntry[], entryNo: number): Standing<SheetSaved, Sheet> {
  const own = entries.filter((entry): entry is EntryOf<SheetSaved> => {
    const { event } = entry;
    return event.kind === "sheet" && event.entryNo === entryNo;
  });
  return standingOf<SheetSaved, Sheet>(own);
}

/** How the answer of a triangle or duo-trio stands. */
export function choiceStanding(entries: readonly TastingEntry[], flightNo: number): Standing<ChoiceMade, Choice> {
  const own = entries.filter((entry): entry is EntryOf<ChoiceMade> => {
    const { event } = entry;
    return event.kind === "choice" && event.flightNo === flightNo;
  });
  return standingOf<ChoiceMade, Choice>(own);
}

function standingOf<C extends { readonly isFinal: boolean; readonly payload: P }, P>(
  own: readonly (EntryOf<C> & TastingEntry)[],
): Standing<C, P> {
  const last = lastOf(own);
  const handedIn = lastOf(own.filter(({ event }) => event.isFinal));
  return {
    payload: last?.event.payload ?? null,
    handedIn: handedIn?.event.payload ?? null,
    isHandedIn: last?.event.isFinal ?? false,
    last,
  };
}
