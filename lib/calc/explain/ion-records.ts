import type { Grams } from "../units";
import { SALTS, type Ion, type Salt } from "../water";
import { SALT_CHEMISTRY } from "../water/salts";
import type { ExplanationInput } from "./explanation";
import type { ExplanationContext } from "./explanation-context";
import { measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord } from "./explanation-record";
import type { NudgeName } from "./nudges";

const SALT_NAMES: Readonly<Record<Salt, string>> = {
  gypsum: "Gypsum",
  calciumChlorideDihydrate: "Calcium chloride, dihydrate",
  epsomSalt: "Epsom salt",
  tableSalt: "Table salt",
  bakingSoda: "Baking soda",
  chalk: "Chalk",
  slakedLime: "Slaked lime",
};

const HOW_IT_COMES_ABOUT =
  "It is what the source water brings and what the salts add, spread evenly over mash and sparge water. What the malt brings is left out, and so is water added after the boil.";

/** How the six ions of the brewing water are explained. */
export const ION_RECORDS = {
  "water.calcium": ionRecord("calcium", "Calcium draws the mash towards acid and helps yeast to settle.", [
    "1 g more gypsum",
    "1 g more calcium chloride",
  ]),
  "water.magnesium": ionRecord("magnesium", "Magnesium feeds yeast, and tastes harsh where there is much of it.", [
    "1 g more Epsom salt",
  ]),
  "water.sodium": ionRecord("sodium", "Sodium rounds a beer off in small amounts and tastes salty in large ones.", [
    "1 g more table salt",
    "1 g more baking soda",
  ]),
  "water.sulfate": ionRecord("sulfate", "Sulfate makes bitterness drier and sharper on the tongue.", [
    "1 g more gypsum",
    "1 g more Epsom salt",
  ]),
  "water.chloride": ionRecord("chloride", "Chloride makes a beer taste fuller and softer.", [
    "1 g more calcium chloride",
    "1 g more table salt",
  ]),
  "water.bicarbonate": ionRecord(
    "bicarbonate",
    "Bicarbonate works against acid, and all the alkalinity of the water is counted as bicarbonate.",
    ["1 g more baking soda"],
  ),
} as const;

function ionRecord(ion: Ion, gloss: string, salts: readonly NudgeName[]): ExplanationRecord {
  return {
    words: `${gloss} ${HOW_IT_COMES_ABOUT}`,
    equation: `${ion} = in the source water + Σ (salt / its molar mass × ions in a molecule × molar mass of the ion) / (mash water + sparge water)`,
    inputs: (a) => [
      measure("In the source water", a.recipe.water.source[ion], "concentration"),
      ...saltInputs(a, ion),
      ...ofLedger(a, "water.mash", "water.sparge"),
    ],
    sources: ["iupac-2021", "trade-practice"],
    validRange: "0 to 10 000 mg/L, salts pure and wholly dissolved, each in the hydrate named.",
    nudges: ["half of the source water replaced by distilled water", ...salts, "10 % more wort into the fermenter"],
  };
}

// The salts of the recipe that give this ion.
function saltInputs({ recipe }: ExplanationContext, ion: Ion): ExplanationInput[] {
  return SALTS.flatMap((salt) => {
    const weighed: Grams | undefined = recipe.water.salts[salt];
    const gives = SALT_CHEMISTRY[salt].gives[ion] !== undefined;
    return weighed !== undefined && gives ? [measure(SALT_NAMES[salt], weighed, "grams")] : [];
  });
}
