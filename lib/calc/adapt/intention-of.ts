import type { Ledger, Recipe } from "../ledger";
import { requireRecipe } from "../ledger/require-brew";
import { ebc, fraction, gramsPerLitre, ibu, milligramsPerLitre, ph } from "../units";
import { mapIons } from "../water/ions";
import type { Salt } from "../water";
import type { Intention, IntendedHop } from "./intention";

/**
 * Reads the intention out of a recipe and its ledger on the kettle that it was written for.
 *
 * @param a.recipe - Amounts for that kettle.
 * @param a.ledger - What `brew` makes of them there.
 * @returns Strength, colour, shares of extract, bitterness of each addition and doses, free of any kettle. The volume is
 * left open: each kettle brews its usual batch unless told otherwise.
 * @validRange Any recipe that brews.
 * @throws {@link OutOfRangeError} when the ledger holds a value outside its unit's range.
 * @source Definitions (docs/sources.md#mass-balance)
 * @example
 * intentionOf({ recipe, ledger }).originalExtract; // 12
 */
export function intentionOf({ recipe, ledger }: { readonly recipe: Recipe; readonly ledger: Ledger }): Intention {
  requireRecipe(recipe);
  const { fermentables, hops, water, intoFermenter, topUp, ...kept } = recipe;
  const { quantities } = ledger;
  const hotWaterL = (quantities["water.mash"] ?? 0) + (quantities["water.sparge"] ?? 0);
  return {
    ...kept,
    intoFermenter: null,
    originalExtract: quantities["fermenter.originalExtract"] ?? 0,
    colour: ebc(quantities["fermenter.colour"] ?? 0),
    fermentables: fermentables.map(({ kg, ...row }, i) => ({
      ...row,
      share: fraction(Math.min(1, ledger.fermentables[i]?.share ?? 0)),
    })),
    hops: hops.map((hop, i) => intendedHop(hop, ledger.hops[i]?.ibu ?? 0, intoFermenter)),
    water: {
      source: water.source,
      saltsMgPerLitre: Object.fromEntries(
        (Object.entries(water.salts) as [Salt, number][]).map(([salt, grams]) => [
          salt,
          milligramsPerLitre((grams * 1000) / hotWaterL),
        ]),
      ),
      ions: mapIons((ion) => quantities[`water.${ion}`] ?? 0),
      acid:
        water.acid === null || quantities["mash.ph"] === null
          ? null
          : { solution: water.acid.solution, mashPh: ph(quantities["mash.ph"]) },
    },
  };
}

/** A hop that gives no bitterness is kept by its dose. */
function intendedHop(hop: Recipe["hops"][number], bitterness: number, intoFermenterL: number): IntendedHop {
  const { grams, ...kept } = hop;
  return bitterness > 0
    ? { ...kept, ibu: ibu(bitterness), gramsPerLitre: null }
    : { ...kept, ibu: null, gramsPerLitre: gramsPerLitre(grams / intoFermenterL) };
}
