import { z } from "zod";
import type { ComparedRow } from "@/lib/calc/compare";
import type { SourceReference } from "@/lib/calc/explain";
import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import { recordId } from "./written";

/** What is set side by side across brewers, in the order of the process. */
export const ACROSS_QUANTITIES = [
  "lauter.efficiency",
  "kettle.preBoil",
  "kettle.preBoilGravity",
  "fermenter.volume",
  "fermenter.originalExtract",
  "fermenter.efficiency",
  "fermenter.attenuation",
  "fermenter.finalExtract",
  "package.alcohol",
] as const satisfies readonly QuantityId[];

/** The beer of the recipe as written, in the numbers that a beer is spoken of by. */
export const RESULT_FIGURES = [
  "fermenter.originalExtract",
  "fermenter.finalExtract",
  "package.alcohol",
  "fermenter.bitterness",
  "fermenter.colour",
] as const satisfies readonly QuantityId[];

/** An order to publish the figures of a shared brew as they are now. The id is made by the page that asks. */
export const newResult = z.strictObject({ id: recordId, sharedBrewId: recordId });
export type NewResult = z.output<typeof newResult>;

const row = z.strictObject({
  quantity: z.enum(ACROSS_QUANTITIES),
  derived: z.boolean(),
  planned: z.number(),
  interval: z.strictObject({ low80: z.number(), high80: z.number() }).nullable(),
  measured: z.number().nullable(),
  measuredSd: z.number().nullable(),
  expectation: z.enum(["inside", "outside"]).nullable(),
});

const column = z.strictObject({
  /** "Brewer A": who that is, nothing tells. */
  name: z.string(),
  rev: z.int(),
  rows: z.array(row),
});

const account = z.strictObject({
  words: z.string(),
  equation: z.string(),
  validRange: z.string(),
  // lib/calc wrote them, and nobody else writes here; their list is not spelt out a second time.
  sources: z.array(z.custom<SourceReference>((value) => typeof value === "object" && value !== null)),
});

/** What is kept of a result: its figures as they were, and how each of the planned ones came about. */
export const resultContent = z.strictObject({
  clubName: z.string(),
  recipeTitle: z.string(),
  brewers: z.int(),
  kettles: z.int(),
  figures: z.partialRecord(z.enum(RESULT_FIGURES), z.number()),
  columns: z.array(column),
  accounts: z.partialRecord(z.enum(ACROSS_QUANTITIES), account),
});
export type ResultContent = z.output<typeof resultContent>;
export type ResultColumn = ResultContent["columns"][number];
export type ResultAccount = z.output<typeof account>;

/** A figure of the result as the comparison of the club has it. */
export function comparedRowOf({ rows }: ResultColumn, id: QuantityId): ComparedRow | null {
  const found = rows.find(({ quantity }) => quantity === id);
  if (found === undefined) return null;
  const { quantity, planned, measured } = found;
  const difference = measured === null ? null : measured - planned;
  return { ...found, station: QUANTITIES[quantity].station, difference, reconciled: null, reconciledSd: null };
}

/** What everybody sees of a published result. */
export interface PublishedResult extends ResultContent {
  readonly address: string;
  readonly title: string;
  readonly publishedAt: Date;
  /** The revisions that were brewed; with an address where that is published too. */
  readonly revisions: readonly { readonly rev: number; readonly address: string | null }[];
  /** A later result of the same shared brew that is published too. */
  readonly newerAddress: string | null;
}

/** A result that is, or was, public; for its own club. */
export interface ResultSummary {
  readonly address: string;
  readonly publishedAt: Date;
  readonly withdrawnAt: Date | null;
}
