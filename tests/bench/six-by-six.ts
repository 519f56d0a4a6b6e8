import type { Fermentable, Recipe } from "@/lib/calc/ledger";
import { fraction, grams, minutes } from "@/lib/calc/units";
import { maltAcidity, maltKindFromColour } from "@/lib/calc/water";
import { malt, paleAle } from "../support/brewing-fixtures";

const hop = (name: string, weight: number, alpha: number, use: "boil" | "stand" | "dry", time: number) => ({
  name,
  grams: grams(weight),
  alpha: fraction(alpha),
  use,
  minutes: minutes(time),
});

/** What the list of ingredients states of a malt, as it is for any recipe that is written with it. */
function stated(row: Fermentable): Fermentable {
  const { distilledWaterPh, buffering } = maltAcidity({ kind: maltKindFromColour(row).kind, colour: row.colour });
  return { ...row, acidity: { distilledWaterPh, buffering, lacticFraction: fraction(0) } };
}

/** The size of recipe that the speed is stated for: six fermentables and six hop additions. Invented. */
export const sixBySix: Recipe = {
  ...paleAle,
  fermentables: [
    malt("Pale ale malt", 3.4, 0.81, 0.035, 6),
    malt("Munich malt light", 0.6, 0.8, 0.042, 14.5),
    malt("Wheat malt pale", 0.4, 0.84, 0.048, 3.8),
    malt("Caramel malt 60L", 0.3, 0.76, 0.043, 158.6),
    malt("Flaked oats", 0.3, 0.72, 0.08, 2.5),
    malt("Chocolate malt", 0.05, 0.72, 0.03, 932.5),
  ].map(stated),
  hops: [
    hop("Bittering", 15, 0.13, "boil", 60),
    hop("Flavour", 10, 0.065, "boil", 30),
    hop("Flavour", 15, 0.065, "boil", 15),
    hop("Late", 20, 0.065, "boil", 5),
    hop("Stand", 30, 0.065, "stand", 20),
    hop("Dry", 40, 0.065, "dry", 0),
  ],
};
