import { z } from "zod";
import { QUANTITY_IDS } from "@/lib/calc/ledger";
import { SERIES_IDS } from "../log/series";

/** Raised when a summary is made otherwise or holds something else, so that those kept count as stale. */
export const SUMMARY_FORM = "4";

const quantity = z.enum(QUANTITY_IDS);
const known = z.number().nullable();

/** One number of a brew, planned and measured, in the ledger's unit. */
export const summaryFigure = z.object({
  quantity,
  /** Computed from readings rather than read. */
  derived: z.boolean(),
  planned: z.number(),
  /** 80 % interval of the plan; null where the planned value was decided, not predicted. */
  plannedLow80: known,
  plannedHigh80: known,
  measured: known,
  /** Standard uncertainty of the measured value, and the interval that it gives. */
  measuredSd: known,
  measuredLow80: known,
  measuredHigh80: known,
  expectation: z.enum(["inside", "outside"]).nullable(),
  reconciled: known,
});
export type SummaryFigure = z.output<typeof summaryFigure>;

/** A line of the account of the extract; which lines there are is the account's own affair. */
const accountLine = z.object({
  id: z.string(),
  label: z.string(),
  effect: z.enum(["holds", "gains", "loses"]),
  plannedKg: z.number(),
  plannedShare: z.number(),
  measuredKg: known,
  measuredSd: known,
  measuredShare: known,
});
export type AccountLine = z.output<typeof accountLine>;

const suspect = z.object({
  quantity,
  measured: z.number(),
  shouldBe: z.number(),
  shouldBeSd: known,
  /** Which test spoke; the comparison of one brew has the names. */
  test: z.string(),
  z: known,
  words: z.string(),
});

export const brewSummary = z.object({
  /** Empty where today's arithmetic refuses what the brew holds. */
  figures: z.array(summaryFigure),
  account: z.object({ weighedOutKg: z.number(), lines: z.array(accountLine) }).nullable(),
  suspects: z.array(suspect),
  counts: z.object({
    /** Everything in the log, corrections and voids among them. */
    entries: z.int(),
    /** Readings of the ledger's numbers and of series that count. */
    readings: z.int(),
    series: z.int(),
  }),
});
/** What a brew comes to, small enough to read five hundred at once. */
export type SummaryOfBrew = z.output<typeof brewSummary>;

const curve = z.object({
  series: z.enum(SERIES_IDS),
  /** What its times count from: the start of the brew day, or pitching. */
  from: z.iso.datetime(),
  /** Seconds after that, and the value in the unit of the series. */
  points: z.array(z.tuple([z.number(), z.number()])),
  /** How many readings it was thinned from. */
  readings: z.int(),
});

export const brewCurves = z.array(curve);
export type SummaryCurve = z.output<typeof curve>;
