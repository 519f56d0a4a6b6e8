import type { FigureSource } from "@/lib/model/generic-ingredients";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";

/** A kind on its own, and many of it. */
export const KIND_WORDS: Readonly<Record<IngredientKind, { readonly one: string; readonly many: string }>> = {
  fermentable: { one: "malt or sugar", many: "Malts and sugars" },
  hop: { one: "hop", many: "Hops" },
  yeast: { one: "yeast", many: "Yeasts" },
  salt: { one: "salt", many: "Salts" },
  acid: { one: "acid", many: "Acids" },
};

export const SOURCE_WORDS: Readonly<Record<FigureSource, { readonly short: string; readonly long: string }>> = {
  memory: { short: "from memory", long: "From memory, as trade sheets quote it; the lot’s own analysis is better." },
  practice: { short: "common practice", long: "Common practice of the trade, without a published source." },
  published: {
    short: "published",
    long: "Follows from the formula, or from the CRC Handbook of Chemistry and Physics.",
  },
};
