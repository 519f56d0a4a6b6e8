import { milligramsPerLitre } from "../../units";
import { IONS, type Ion } from "../../water";
import type { FunctionInput } from "./function-record";

/** A moderately hard water, mg/L. */
export const EXAMPLE_WATER = { calcium: 80, magnesium: 12, sodium: 25, sulfate: 70, chloride: 50, bicarbonate: 180 };

/** All of an ion that a water may hold, mg/L, drawn in by a hair so that rounding does not put it outside. */
export const FULLEST_WATER = milligramsPerLitre.range.max * (1 - 1e-9);

const ION_LABELS: Readonly<Record<Ion, string>> = {
  calcium: "Calcium",
  magnesium: "Magnesium",
  sodium: "Sodium",
  sulfate: "Sulfate",
  chloride: "Chloride",
  bicarbonate: "Bicarbonate",
};

/**
 * Lists the ions of a water as inputs.
 *
 * @param at - Where the water stands among the arguments.
 * @param of - Whose water it is, after the name of the ion.
 * @returns One input for each ion.
 */
export function ionInputs(at: string, of = ""): readonly FunctionInput[] {
  return IONS.map((ion) => ({ at: `${at}.${ion}`, label: `${ION_LABELS[ion]}${of}`, ...milligramsPerLitre.range }));
}
