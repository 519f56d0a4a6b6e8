import { z } from "zod";
import { oneOf, optionalText } from "./written";

/** Figures of the beer that a plan can hold the same for everybody. */
export const HELD_FIGURES = ["volume", "originalExtract", "bitterness", "colour", "mashPh"] as const;
export type HeldFigure = (typeof HELD_FIGURES)[number];

export const WATER_RULES = ["as written", "same treated water", "own water"] as const;
export type WaterRule = (typeof WATER_RULES)[number];

const held = (label: string): z.ZodType<boolean> => z.boolean({ error: `${label} is held or not` });

/** What is held constant in a shared brew; what is not, follows each kettle. */
export const sharedBrewRules = z.strictObject({
  volume: held("Volume"),
  originalExtract: held("Original extract"),
  bitterness: held("Bitterness"),
  colour: held("Colour"),
  mashPh: held("Mash pH"),
  water: oneOf("Water", WATER_RULES),
  yeast: z.strictObject({ same: held("Yeast"), lot: optionalText("Yeast lot", 80) }),
  words: optionalText("Other rules", 2000),
});
export type SharedBrewRules = z.output<typeof sharedBrewRules>;

/** The beer of the recipe, in the amount that each kettle usually brews. */
export const AS_WRITTEN: SharedBrewRules = {
  volume: false,
  originalExtract: true,
  bitterness: true,
  colour: true,
  mashPh: true,
  water: "as written",
  yeast: { same: true, lot: "" },
  words: "",
};

export const FIGURE_WORDS: Readonly<Record<HeldFigure, string>> = {
  volume: "volume into the fermenter",
  originalExtract: "original extract",
  bitterness: "bitterness",
  colour: "colour",
  mashPh: "mash pH",
};

/** What becomes of a figure that is not held. */
export const LOOSE_WORDS: Readonly<Record<HeldFigure, string>> = {
  volume: "each kettle brews its usual batch",
  originalExtract: "malt by the litre as written; the strength follows the kettle",
  bitterness: "hops by the litre as written; the bitterness follows the kettle",
  colour: "malts in the proportions as written; the colour follows the kettle",
  mashPh: "acid by the litre of mash water as written; the pH follows the kettle",
};

export const WATER_WORDS: Readonly<Record<WaterRule, string>> = {
  "as written": "water and salts as in the recipe",
  "same treated water": "the same treated water: salts solved in everybody’s own water",
  "own water": "everybody’s own water, without salts",
};

/** The rules as sentences without a full stop, held first. */
export function rulesInWords(rules: SharedBrewRules): readonly string[] {
  const same = HELD_FIGURES.filter((figure) => rules[figure]).map((figure) => FIGURE_WORDS[figure]);
  const loose = HELD_FIGURES.filter((figure) => !rules[figure]).map((figure) => LOOSE_WORDS[figure]);
  return [
    ...(same.length === 0 ? [] : [`Same for all: ${same.join(", ")}`]),
    ...loose.map(capitalised),
    capitalised(WATER_WORDS[rules.water]),
    yeastInWords(rules.yeast),
    ...(rules.words === "" ? [] : [rules.words]),
  ];
}

export function yeastInWords({ same, lot }: SharedBrewRules["yeast"]): string {
  if (!same) return "Everybody’s own yeast";
  return lot === "" ? "The yeast of the recipe" : `The same yeast, lot ${lot}`;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
