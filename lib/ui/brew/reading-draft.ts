import type { Dimension } from "@/lib/calc/ledger";
import type { LoggedQuantity } from "@/lib/model/log/series";
import type { Reading } from "@/lib/model/reading";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { fixedDigits } from "../fixed-digits";
import { parseAmount } from "../parse-amount";
import type { Expected } from "./far-from-plan";
import { HYDROMETER_CALIBRATION_C, readGravity } from "./read-gravity";
import { parseUncertainty, uncertaintyText } from "./reading-uncertainty";

type Instrument = Reading["instrument"];

/** One place on the run sheet where something is measured. */
export interface MeasuringPoint {
  readonly quantity: LoggedQuantity;
  readonly label: string;
  readonly dimension: Dimension;
  readonly expected: Expected | null;
  /** What such a reading is usually uncertain by, in the library's unit. */
  readonly usualSd: number;
  /** What a reading can be, in the library's unit. */
  readonly range: { readonly min: number; readonly max: number };
  /** What it is measured with, the usual instrument first. */
  readonly instruments: readonly Instrument[];
}

/** A reading while it is typed. */
export interface ReadingDraft {
  readonly amount: string;
  readonly sample: string;
  readonly instrument: Instrument;
  readonly sd: string;
  /** Local date and time as its control writes it; empty is now. */
  readonly at: string;
  readonly note: string;
}

export type DraftField = keyof ReadingDraft;
export type DraftErrors = Readonly<Partial<Record<DraftField, string>>>;

/** What a draft says, ready to be sent. */
export interface WrittenReading {
  readonly value: number;
  readonly sd: number;
  readonly instrument: Instrument;
  readonly sampleC: number | null;
  readonly occurredAt: Date | null;
  readonly note: string;
  readonly entered: string;
  /** What an instrument's correction did, in words. */
  readonly correction: string | null;
}

export type ReadDraft =
  { readonly ok: true; readonly reading: WrittenReading } | { readonly ok: false; readonly errors: DraftErrors };

const MOST_ENTERED = 80;

export function emptyDraft(point: MeasuringPoint, preferences: Preferences): ReadingDraft {
  const { dimension, expected, usualSd, instruments } = point;
  const sample = displayUnit("temperature", preferences).fromLibrary(HYDROMETER_CALIBRATION_C);
  return {
    amount: "",
    sample: fixedDigits(sample, 0),
    instrument: instruments[0] ?? "other",
    sd: uncertaintyText(usualSd, dimension, preferences, expected?.value ?? 10),
    at: "",
    note: "",
  };
}

/** Reads a draft into the ledger's units; every message says field, value and range. */
export function readDraft(draft: ReadingDraft, point: MeasuringPoint, preferences: Preferences): ReadDraft {
  const value = readValue(draft, point, preferences);
  const at = value.ok ? value.value : (point.expected?.value ?? 10);
  const sd = parseUncertainty({ text: draft.sd, dimension: point.dimension, preferences, at });
  const occurredAt = draft.at === "" ? null : new Date(draft.at);
  const isNoTime = occurredAt !== null && Number.isNaN(occurredAt.getTime());
  if (!value.ok || !sd.ok || isNoTime) {
    const errors: DraftErrors = {
      ...(value.ok ? {} : { [value.field]: value.message }),
      ...(sd.ok ? {} : { sd: sd.message }),
      ...(isNoTime ? { at: "Time of the reading is not a date with a time; leave it empty for now" } : {}),
    };
    return { ok: false, errors };
  }
  const { instrument, note } = draft;
  const { sampleC, correction } = value;
  const entered = enteredText(draft, point, preferences);
  return {
    ok: true,
    reading: { value: value.value, sd: sd.value, instrument, sampleC, occurredAt, note, entered, correction },
  };
}

type ReadValue =
  | { readonly ok: true; readonly value: number; readonly sampleC: number | null; readonly correction: string | null }
  | { readonly ok: false; readonly field: "amount" | "sample"; readonly message: string };

function readValue(draft: ReadingDraft, point: MeasuringPoint, preferences: Preferences): ReadValue {
  const { label, dimension, range } = point;
  if (dimension === "extract") {
    const gravity = readGravity({ ...draft, label, preferences, range });
    return gravity.ok ? { ...gravity, value: gravity.plato } : gravity;
  }
  const parsed = parseAmount({ text: draft.amount, label, dimension, preferences, range });
  if (!parsed.ok) return { ok: false, field: "amount", message: parsed.message };
  return { ok: true, value: parsed.value, sampleC: null, correction: null };
}

/** What was typed, with the units that stood beside it: the log outlives the reader's choice of units. */
function enteredText(draft: ReadingDraft, point: MeasuringPoint, preferences: Preferences): string {
  const amount = withUnit(draft.amount, amountUnitText(draft, point, preferences));
  if (!needsSampleTemperature(draft, point)) return amount.slice(0, MOST_ENTERED);
  const sample = withUnit(draft.sample, displayUnit("temperature", preferences).unit);
  return `${amount} at ${sample}`.slice(0, MOST_ENTERED);
}

function withUnit(text: string, unit: string): string {
  return /\d\s*$/.test(text) ? `${text.trim()} ${unit}` : text.trim();
}

/** The unit that stands beside the field of the amount. */
export function amountUnitText(draft: ReadingDraft, { dimension }: MeasuringPoint, preferences: Preferences): string {
  return draft.instrument === "refractometer" ? "°Bx" : displayUnit(dimension, preferences).unit;
}

/** Of the instruments, only a hydrometer depends on how warm its sample is. */
export function needsSampleTemperature({ instrument }: ReadingDraft, { dimension }: MeasuringPoint): boolean {
  return dimension === "extract" && instrument === "hydrometer";
}
