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
import { readVolume, stickUnit, type VolumeReading } from "./read-volume";

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
  /** Of a volume that may be read hot or with a stick; null for everything else. */
  readonly volume: VolumeReading | null;
  /** Of fermenting beer whose original extract is known, °P: then a refractometer tells something of it after all. */
  readonly fermentingFrom?: number | null;
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
  const { dimension, expected, usualSd, instruments, volume } = point;
  const sample = displayUnit("temperature", preferences).fromLibrary(volume?.referenceC ?? HYDROMETER_CALIBRATION_C);
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
  const { sampleC, correction, stickSd, fitSd } = value;
  const entered = enteredText(draft, point, preferences);
  return {
    ok: true,
    reading: {
      value: value.value,
      sd: Math.hypot(sd.value, stickSd ?? 0, fitSd ?? 0),
      instrument,
      sampleC,
      occurredAt,
      note,
      entered,
      correction,
    },
  };
}

type ReadValue =
  | {
      readonly ok: true;
      readonly value: number;
      readonly sampleC: number | null;
      readonly stickSd?: number | null;
      readonly fitSd?: number | null;
      readonly correction: string | null;
    }
  | { readonly ok: false; readonly field: "amount" | "sample"; readonly message: string };

function readValue(draft: ReadingDraft, point: MeasuringPoint, preferences: Preferences): ReadValue {
  const { label, dimension, range, volume, fermentingFrom = null } = point;
  if (volume !== null) {
    const read = readVolume({ ...draft, label, preferences, range, volume, isStick: isStick(draft, point) });
    return read.ok ? { ...read, value: read.litres } : read;
  }
  if (dimension === "extract") {
    const gravity = readGravity({ ...draft, label, preferences, range, fermentingFrom });
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
export function amountUnitText(draft: ReadingDraft, point: MeasuringPoint, preferences: Preferences): string {
  const { dimension, volume } = point;
  if (volume !== null && volume.dipStick !== null && isStick(draft, point)) return stickUnit(volume.dipStick);
  return draft.instrument === "refractometer" ? "°Bx" : displayUnit(dimension, preferences).unit;
}

/** A stick without a table is one that is marked in litres. */
function isStick({ instrument }: ReadingDraft, { volume }: MeasuringPoint): boolean {
  return instrument === "measuring stick" && volume !== null && volume.dipStick !== null;
}

/** A hydrometer depends on how warm its sample is, and a volume on how warm the liquid is. */
export function needsSampleTemperature({ instrument }: ReadingDraft, { dimension, volume }: MeasuringPoint): boolean {
  return volume !== null || (dimension === "extract" && instrument === "hydrometer");
}

/** What the temperature beside a reading is of. */
export function sampleLabel({ volume }: MeasuringPoint): string {
  return volume === null ? "Sample at" : "Liquid at";
}
