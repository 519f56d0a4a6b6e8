import type { Fermentable, Ledger } from "../ledger";
import { fraction, kilograms } from "../units";
import type { ExplainedNumber, ExplanationInput } from "./explanation";
import { explanationContext, type BrewInput, type ExplanationContext } from "./explanation-context";
import { figure, measure, ofLedger } from "./explanation-inputs";
import { ofRecipe, possible, type Nudge } from "./nudge";
import { NUDGES } from "./nudges";
import { referencesOf } from "./source-titles";
import { whatIf } from "./what-if";

/**
 * Explains the extract that one fermentable gives, with its share of the extract and of the colour.
 *
 * @param a.index - Row of the recipe's fermentables, counted from 0.
 * @returns The explanation, or null where the recipe has no such row.
 * @validRange Any ledger of `brew`.
 * @throws {@link OutOfRangeError} when recipe, equipment or day are not those that the ledger was brewed from.
 * @source Mass balance (docs/sources.md#mass-balance)
 * @example
 * explainFermentable({ ledger, recipe, equipment, ambient, index: 0 })?.value; // 3.1, kg
 */
export function explainFermentable(
  a: BrewInput & { readonly ledger: Ledger; readonly index: number },
): ExplainedNumber | null {
  const { recipe, ledger, index } = a;
  const row = recipe.fermentables[index];
  const result = ledger.fermentables[index];
  if (row === undefined || result === undefined) return null;
  const mashed = row.station === "mash";
  return {
    label: `Extract from ${row.name}`,
    value: result.extractKg,
    dimension: "mass",
    words: mashed ? MASHED_WORDS : ADDED_WORDS,
    equation: `extract = mass × (1 − moisture) × yield of the dry substance${
      mashed ? " × conversion × lauter efficiency" : ""
    }; share = extract / all extract at the end of the boil; share of the colour = mass × °L / Σ mass × °L`,
    inputs: inputsOf(explanationContext(a), row, index),
    sources: referencesOf(["mass-balance", "trade-practice"]),
    validRange: "Moisture and yield as stated for the row.",
    whatIf: whatIf({
      brew: a,
      value: result.extractKg,
      read: (changed) => changed.fermentables[index]?.extractKg ?? null,
      nudges: nudgesOf(index),
    }),
  };
}

const MASHED_WORDS =
  "The extract from this row that is in the wort at the end of the boil. Its mass without moisture times the yield of its dry substance is what it holds; everything in the mash then loses the same share to incomplete conversion and to the wort that the grain keeps. Dark and pale malts are treated alike in that, which is not quite true.";

const ADDED_WORDS =
  "The extract from this row that is in the wort at the end of the boil. It goes straight into the kettle and loses nothing on the way, so it is its mass without moisture times the yield of its dry substance.";

function inputsOf(a: ExplanationContext, row: Fermentable, index: number): readonly ExplanationInput[] {
  const result = a.ledger.fermentables[index];
  return [
    measure("Mass", row.kg, "mass"),
    measure("Moisture", row.moisture, "fraction"),
    measure("Yield of the dry substance", row.extract, "fraction"),
    ...(row.station === "mash"
      ? [figure("Conversion", a.equipment.lauter.conversion, "fraction"), ...ofLedger(a, "lauter.efficiency")]
      : []),
    measure("Share of all extract", result?.share ?? null, "fraction"),
    measure("Colour of the row", row.colour, "colour"),
    measure("Share of the colour", result?.colourShare ?? null, "fraction"),
  ];
}

function nudgesOf(index: number): readonly (readonly [string, Nudge])[] {
  const thisRow = (change: (row: Fermentable) => Partial<Fermentable> | null): Nudge =>
    ofRecipe(({ fermentables }) => {
      const row = fermentables[index];
      const part = row === undefined ? null : change(row);
      return part === null
        ? null
        : { fermentables: fermentables.map((each, i) => (i === index ? { ...each, ...part } : each)) };
    });
  return [
    [
      "10 % more of it",
      thisRow((row) => {
        const kg = possible(kilograms, row.kg * 1.1);
        return kg === null ? null : { kg };
      }),
    ],
    [
      "1 percentage point less extract",
      // Pure sugar yields what it is.
      thisRow((row) => {
        const extract = row.kind === "sugar" ? null : possible(fraction, row.extract - 0.01);
        return extract === null ? null : { extract };
      }),
    ],
    ["no sparge water past the grain", NUDGES["no sparge water past the grain"]],
    ["conversion 3 percentage points lower", NUDGES["conversion 3 percentage points lower"]],
  ];
}
