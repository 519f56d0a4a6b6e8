import { OutOfRangeError } from "@/lib/calc/errors";
import {
  correctHydrometer,
  finalGravityFromBrix,
  originalPlatoFromBrix,
  platoToSpecificGravity,
  specificGravityToPlato,
} from "@/lib/calc/gravity";
import { celsius, degreesBrix, degreesPlato, type DegreesBrix } from "@/lib/calc/units";
import type { Preferences } from "@/lib/model/preferences";
import type { Reading } from "@/lib/model/reading";
import { formatQuantity } from "../format-quantity";
import { parseAmount } from "../parse-amount";

/** Where hydrometers for brewing are right; common practice, no source. */
export const HYDROMETER_CALIBRATION_C = 20;
/** How much too high a refractometer reads wort, unless its owner knows better; common practice, no source. */
export const WORT_CORRECTION = 1.04;

/** A gravity as its instrument showed it, and as it counts. */
export type ReadGravity =
  | {
      readonly ok: true;
      readonly plato: number;
      readonly sampleC: number | null;
      readonly correction: string | null;
      /** What a fit behind the correction is uncertain by, °P. */
      readonly fitSd?: number;
    }
  | { readonly ok: false; readonly field: "amount" | "sample"; readonly message: string };

interface GravityText {
  readonly label: string;
  readonly amount: string;
  readonly sample: string;
  readonly instrument: Reading["instrument"];
  readonly preferences: Preferences;
  readonly range: { readonly min: number; readonly max: number };
  /** Original extract of fermenting beer, °P; null for wort. */
  readonly fermentingFrom?: number | null;
}

/** Reads a gravity, °P, corrected for what its instrument gets wrong; `correction` says what was done, in words. */
export function readGravity(a: GravityText): ReadGravity {
  try {
    if (a.instrument === "refractometer") return readRefractometer(a);
    return a.instrument === "hydrometer" ? readHydrometer(a) : readDirect(a);
  } catch (error) {
    if (!(error instanceof OutOfRangeError)) throw error;
    return { ok: false, field: error.quantity === "sample temperature" ? "sample" : "amount", message: told(a, error) };
  }
}

function readDirect({ label, amount, preferences, range }: GravityText): ReadGravity {
  const parsed = parseAmount({ text: amount, label, dimension: "extract", preferences, range });
  if (!parsed.ok) return { ok: false, field: "amount", message: parsed.message };
  return { ok: true, plato: parsed.value, sampleC: null, correction: null };
}

function readHydrometer(a: GravityText): ReadGravity {
  const { preferences } = a;
  const read = readDirect(a);
  if (!read.ok) return read;
  const sample = parseAmount({ text: a.sample, label: "Sample temperature", dimension: "temperature", preferences });
  if (!sample.ok) return { ok: false, field: "sample", message: sample.message };
  const corrected = correctHydrometer({
    sg: platoToSpecificGravity(degreesPlato(read.plato)),
    sampleC: celsius(sample.value),
    calibrationC: celsius(HYDROMETER_CALIBRATION_C),
  });
  const plato = specificGravityToPlato(corrected);
  const isSame = Math.abs(sample.value - HYDROMETER_CALIBRATION_C) < 0.05;
  const correction = isSame
    ? null
    : `At ${inUnit(HYDROMETER_CALIBRATION_C, "temperature", preferences)} it would show ${inUnit(plato, "extract", preferences)}`;
  return { ok: true, plato, sampleC: sample.value, correction };
}

const BRIX = /^\s*(\d+[.,]?\d*|[.,]\d+)\s*(?:°\s*)?(?:bx|brix)?\s*$/i;

function readRefractometer({ label, amount, preferences, range, fermentingFrom }: GravityText): ReadGravity {
  const number = BRIX.exec(amount)?.[1];
  if (number === undefined) {
    const message = `${label} “${amount.trim().slice(0, 40)}” is not a number in °Bx, the scale of a refractometer`;
    return { ok: false, field: "amount", message };
  }
  const brix = degreesBrix(Number(number.replace(",", ".")));
  if (typeof fermentingFrom === "number") return ofFermentingBeer(brix, fermentingFrom, preferences);
  const plato = originalPlatoFromBrix({ brix, correction: WORT_CORRECTION });
  if (plato > range.max) throw new OutOfRangeError(label, plato, { unit: "°P", ...range });
  const correction = `Wort reads ${WORT_CORRECTION} times too high in a refractometer: ${inUnit(plato, "extract", preferences)}`;
  return { ok: true, plato, sampleC: null, correction };
}

/** The fit to measured beers is typically within 0.002 SG, which is half a degree Plato. */
const FERMENTING_SD = 0.5;

/** Alcohol bends light as well; with the extract before fermentation the gravity can be estimated. */
function ofFermentingBeer(finalBrix: DegreesBrix, originalPlato: number, preferences: Preferences): ReadGravity {
  const originalBrix = degreesBrix(originalPlato * WORT_CORRECTION);
  const sg = finalGravityFromBrix({ originalBrix, finalBrix, correction: WORT_CORRECTION });
  const plato = specificGravityToPlato(sg);
  const correction = `With alcohol in it, estimated from ${inUnit(originalPlato, "extract", preferences)} before fermentation: ${inUnit(plato, "extract", preferences)}, give or take 0.002 SG; a hydrometer is needed before packaging`;
  return { ok: true, plato, sampleC: null, correction, fitSd: FERMENTING_SD };
}

function told({ label }: GravityText, error: OutOfRangeError): string {
  return error.quantity === "sample temperature"
    ? "A hydrometer is corrected from 0 to 60 °C (32 to 140 °F): cool the sample, then read it"
    : `${label}: ${error.message}`;
}

function inUnit(value: number, dimension: "temperature" | "extract", preferences: Preferences): string {
  const { text, unit } = formatQuantity({ value, dimension, preferences });
  return `${text} ${unit}`;
}
