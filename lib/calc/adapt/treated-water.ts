import { mashOf } from "../ledger/acidity-of";
import { waterL, type Masses } from "../ledger/mass-balance";
import type { Recipe } from "../ledger/recipe";
import { fraction, grams, litres, millilitres } from "../units";
import { acidFor, saltsFor, type SaltGrams } from "../water";
import type { Intention } from "./intention";

/** Nobody pours more acid than this into a litre of mash water. */
const MOST_ACID_ML_PER_L = 20;

/**
 * Weighs out salts and acid for the water of a recipe whose other amounts stand.
 *
 * The same water gets the same dose of salts. For another water they are solved anew, as near to the ions wanted as
 * salts can bring it. The acid is what brings this mash to the pH of the intention, since the pH hangs on the thickness.
 *
 * @returns The recipe with salts and acid; without acid where the mash is sour enough.
 * @source docs/sources.md#lawson-hanson-1974, docs/sources.md#delange-2015
 */
export function withTreatedWater(intention: Intention, recipe: Recipe, masses: Masses): Recipe {
  const hotWaterL = waterL(masses.mashWaterKg + masses.spargeKg);
  const { source } = intention.water;
  const salted = { ...recipe, water: { source, salts: saltsOf(intention, hotWaterL), acid: null } };
  const { acid } = intention.water;
  const mash = acid === null ? null : mashOf(salted, masses);
  if (acid === null || mash === null) return salted;
  const found = acidFor({
    ...mash,
    targetPh: acid.mashPh,
    acid: acid.solution,
    mostMl: millilitres(MOST_ACID_ML_PER_L * mash.water.litres),
  });
  const ml = found.ok ? found.ml : found.reason === "too-much-acid" ? found.ml : null;
  return ml === null ? salted : { ...salted, water: { ...salted.water, acid: { solution: acid.solution, ml } } };
}

function saltsOf({ water }: Intention, hotWaterL: number): SaltGrams {
  if (water.saltsMgPerLitre !== null) {
    return Object.fromEntries(
      Object.entries(water.saltsMgPerLitre).map(([salt, dose]) => [salt, grams((dose * hotWaterL) / 1000)]),
    );
  }
  const found = saltsFor({
    source: water.source,
    target: water.ions,
    litres: litres(hotWaterL),
    mostDemineralised: fraction(0),
  });
  return Object.fromEntries(Object.entries(found.grams).filter(([, weight]) => weight > 0));
}
