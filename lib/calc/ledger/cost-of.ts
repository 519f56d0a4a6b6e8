import { requireInRange } from "../errors";
import type { Ledger } from "./ledger";
import type { Station } from "./quantity-catalogue";
import type { Recipe } from "./recipe";
import { requireRecipe } from "./require-brew";

/** What things cost, in whatever currency; null where nobody knows. */
export interface Prices {
  /** For each kilogram of each fermentable, in the order of the recipe. */
  readonly fermentables: readonly (number | null)[];
  /** For each kilogram of each hop addition, in the order of the recipe. */
  readonly hops: readonly (number | null)[];
  readonly yeast: number | null;
  readonly kilowattHour: number | null;
  readonly cubicMetreOfWater: number | null;
}

export interface Cost {
  /** Sum of what has a price. */
  readonly total: number;
  /** The same for each litre packaged; null when nothing is packaged. */
  readonly perLitre: number | null;
  readonly stations: Readonly<Record<Station, number>>;
  /** What has no price, by name; the total is too low by these. */
  readonly without: readonly string[];
}

export const PRICE_RANGE = { unit: "", min: 0, max: 1_000_000 } as const;

/**
 * Adds up what a brew costs, station by station.
 *
 * @param a.ledger - What `brew` made of the recipe.
 * @param a.recipe - The recipe with its amounts.
 * @param a.prices - Price of each row, of yeast, electricity and water.
 * @returns Total, cost for each litre packaged and for each station, and what had no price.
 * @validRange Prices from 0 to 1 000 000 of any currency. Gas, cooling water and cleaning are left out.
 * @throws {@link OutOfRangeError} when a price or a number of the recipe is outside its range.
 * @source Definition (docs/sources.md#mass-balance)
 * @example
 * costOf({ ledger, recipe, prices }).perLitre; // 0.92
 */
export function costOf({
  ledger,
  recipe,
  prices,
}: {
  readonly ledger: Ledger;
  readonly recipe: Recipe;
  readonly prices: Prices;
}): Cost {
  requireRecipe(recipe);
  const stations: Record<Station, number> = {
    water: 0,
    mash: 0,
    lauter: 0,
    kettle: 0,
    stand: 0,
    fermenter: 0,
    package: 0,
  };
  const without = new Set<string>();
  const add = (station: Station, name: string, amount: number, price: number | null | undefined): void => {
    if (price === null || price === undefined) without.add(name);
    else stations[station] += amount * requireInRange(`price of ${name}`, price, PRICE_RANGE);
  };
  recipe.fermentables.forEach((row, i) => {
    add(row.station, row.name, row.kg, prices.fermentables[i]);
  });
  recipe.hops.forEach((hop, i) => {
    const station = { boil: "kettle", stand: "stand", dry: "fermenter" } as const;
    add(station[hop.use], hop.name, hop.grams / 1000, prices.hops[i]);
  });
  const { quantities } = ledger;
  add("water", "water", (quantities["water.total"] ?? 0) / 1000, prices.cubicMetreOfWater);
  add("fermenter", recipe.yeast.name, 1, prices.yeast);
  add("kettle", "electricity", quantities["day.energy"] ?? 0, prices.kilowattHour);
  const total = Object.values(stations).reduce((sum, cost) => sum + cost, 0);
  const packagedL = quantities["package.volume"] ?? 0;
  return { total, perLitre: packagedL > 0 ? total / packagedL : null, stations, without: [...without] };
}
