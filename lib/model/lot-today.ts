import { alphaAfterStorage } from "@/lib/calc/bitterness";
import { cellsInPack, PACK_RANGE, type YeastForm } from "@/lib/calc/fermentation";
import { days, fraction, type BillionCells, type Celsius, type Days, type Fraction } from "@/lib/calc/units";
import type { HopPackaging, LotKindAndFigures } from "./ingredient-lot";
import type { LotFigures } from "./lot";

type HopFigures = Extract<LotKindAndFigures, { readonly kind: "hop" }>["figures"];
type YeastFigures = Extract<LotKindAndFigures, { readonly kind: "yeast" }>["figures"];

const DAY_MS = 86_400_000;

/** How fast hops lose alpha acids in their packaging, against loose ones; from memory, as `alphaAfterStorage` says. */
const STORAGE_FACTOR: Readonly<Record<HopPackaging, number>> = {
  loose: 1,
  "sealed bag": 0.75,
  "vacuum or inert gas": 0.5,
};

/** What `alphaAfterStorage` is asked for a lot. */
export interface HopStorage {
  readonly alphaFraction: Fraction;
  readonly lossIn6Months: Fraction;
  readonly days: Days;
  readonly celsius: Celsius;
  readonly storageFactor: Fraction;
}

/**
 * How a lot of hops has been stored up to a day; null where the analysis, its day, the store or what the variety loses is
 * not known, or the analysis lies after the day.
 */
export function hopStorage(
  { alpha, analysedOn, storedAt, packaging }: HopFigures,
  lossIn6Months: Fraction | null,
  today: string,
): HopStorage | null {
  if (alpha === null || analysedOn === null || storedAt === null || packaging === null) return null;
  const age = daysBetween(analysedOn, today);
  if (lossIn6Months === null || age < 0 || age > days.range.max) return null;
  return {
    alphaFraction: alpha,
    lossIn6Months,
    days: days(age),
    celsius: storedAt,
    storageFactor: fraction(STORAGE_FACTOR[packaging]),
  };
}

/** What `cellsInPack` is asked for a lot. */
export interface AgedPack {
  readonly cells: BillionCells;
  readonly ageDays: Days;
  readonly form: YeastForm;
  readonly celsius: Celsius;
}

/** How old a lot of yeast is on a day; null where too little is known, or it was kept where no rate holds. */
export function agedPack({ form, cells, packedOn, storedAt }: YeastFigures, today: string): AgedPack | null {
  if (cells === null || packedOn === null || storedAt === null) return null;
  const age = daysBetween(packedOn, today);
  const { min, max } = PACK_RANGE.celsius[form];
  if (age < PACK_RANGE.days.min || age > PACK_RANGE.days.max || storedAt < min || storedAt > max) return null;
  return { cells, ageDays: days(age), form, celsius: storedAt };
}

/** A lot as a recipe of that day has it: hops with what storage has left of their alpha acids, yeast with what lives. */
export function lotToday(what: LotKindAndFigures, lossIn6Months: Fraction | null, today: string): LotFigures {
  if (what.kind === "fermentable") return { kind: "fermentable", figures: what.figures };
  if (what.kind === "salt") return { kind: "salt", figures: {} };
  if (what.kind === "acid") return { kind: "acid", figures: what.figures };
  if (what.kind === "yeast") return { kind: "yeast", figures: { cells: livingCells(what.figures, today) } };
  const storage = hopStorage(what.figures, lossIn6Months, today);
  return { kind: "hop", figures: { alpha: storage === null ? what.figures.alpha : alphaAfterStorage(storage) } };
}

/** As counted when packed where age or store are not known. */
function livingCells(figures: YeastFigures, today: string): BillionCells | null {
  const pack = agedPack(figures, today);
  return pack === null ? figures.cells : cellsInPack(pack).expected;
}

/** Whole days from one day of the calendar to another. */
function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);
}

/** The day of the calendar, in UTC, as the server keeps time. */
export function dayOf(at: Date): string {
  return at.toISOString().slice(0, 10);
}
