import { z } from "zod";
import { revisionNumber } from "../measured";
import { oneOf, recordId } from "../written";
import { PROPOSED_FIGURES } from "./proposals";
import type { KeptEntry } from "./trial-entry";

/** One commissioning of a kettle with plain water. */
export interface Trial {
  readonly id: string;
  readonly equipmentId: string;
  /** ISO time. */
  readonly begunAt: string;
  readonly begunByName: string;
  /** The revision that took figures of it last. */
  readonly accepted: { readonly rev: number; readonly byName: string } | null;
  readonly entries: readonly KeptEntry[];
}

export interface TrialLine {
  readonly id: string;
  readonly begunAt: string;
  readonly entryCount: number;
  readonly acceptedRev: number | null;
}

/** Which figures a brewer takes, with the values that the page showed. */
export const figureAcceptance = z.strictObject({
  trialId: recordId,
  baseRev: revisionNumber,
  accepted: z
    .array(
      z.strictObject({
        figure: oneOf("Figure", PROPOSED_FIGURES),
        value: z.number({ error: "The value of a figure is not a number" }),
      }),
      { error: "The figures are not a list" },
    )
    .min(1, "No figure was chosen")
    .max(PROPOSED_FIGURES.length, "A figure was chosen twice"),
});
export type FigureAcceptance = z.output<typeof figureAcceptance>;

/** What became of the entries that a page sent, and all that the trial has now. */
export interface DeliveryAnswer {
  /** On the server for good, now or before. */
  readonly stored: readonly string[];
  readonly refused: readonly { readonly id: string; readonly reason: string }[];
  readonly entries: readonly KeptEntry[];
}

/** The day of a trial as a figure names it: "29 Nov 2026". The same on every machine. */
export function trialDay(begunAt: string): string {
  return new Intl.DateTimeFormat("en-GB", {
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone: "UTC",
  }).format(new Date(begunAt));
}
