import type { Equipment } from "./equipment";
import type { GristSums } from "./grist-sums";
import { leftInKettleL, massBalance, retainedL, waterKg, type Masses } from "./mass-balance";
import type { Recipe } from "./recipe";

/** Close enough that the volume in the fermenter repeats to eleven digits. */
const TOLERANCE = 1e-11;
const MOST_PASSES = 30;

export type PlannedWater =
  | { readonly ok: true; readonly masses: Masses }
  | { readonly ok: false; readonly reason: "grain-holds-all-water" | "too-strong"; readonly value: number };

/**
 * Finds the water that gives the wanted volume in the fermenter.
 *
 * The volume is almost linear in the water, so a secant closes in three or four passes from the sum of all losses.
 *
 * @returns The masses at every station, or why no amount of water does it.
 * @source Mass balance (docs/sources.md#mass-balance)
 */
export function planWater(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly sums: GristSums;
  readonly evaporatedKg: number;
}): PlannedWater {
  const target = a.recipe.intoFermenter;
  let water = firstGuessKg(a.recipe, a.equipment, a.sums, a.evaporatedKg);
  let previousWater = 0;
  let previousMiss = 0;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const masses = massBalance({ ...a, ...splitWater(a.recipe, a.equipment, a.sums, water) });
    if ("wortLitres" in masses) {
      if (pass > 4) return { ok: false, reason: "grain-holds-all-water", value: masses.wortLitres };
      water = water * 1.3 + 1;
      continue;
    }
    const miss = masses.fermenterL - target;
    if (Math.abs(miss) <= TOLERANCE * target) return { ok: true, masses };
    const slope = previousWater === 0 ? 1 : (miss - previousMiss) / (water - previousWater);
    previousWater = water;
    previousMiss = miss;
    water = Math.max(water / 3, water - miss / (slope > 0.2 && slope < 5 ? slope : 1));
  }
  return { ok: false, reason: "too-strong", value: target };
}

function firstGuessKg(recipe: Recipe, equipment: Equipment, sums: GristSums, evaporatedKg: number): number {
  const wortKg =
    1.04 * (recipe.intoFermenter - recipe.topUp + leftInKettleL(sums, equipment)) + evaporatedKg - sums.addedKg;
  const heldKg = 1.03 * retainedL(recipe, sums, equipment);
  return Math.max(waterKg(0.5), wortKg + heldKg - sums.maltWaterKg - sums.dissolvedKg);
}

/**
 * Splits the hot-side water by the mash thickness; without a sparge all of it goes into the mash.
 *
 * @returns Masses, kg.
 */
export function splitWater(
  recipe: Recipe,
  equipment: Equipment,
  sums: GristSums,
  hotWaterKg: number,
): { readonly mashWaterKg: number; readonly spargeKg: number } {
  if (equipment.lauter.method === "none" || recipe.thickness === null || sums.gristKg === 0) {
    return { mashWaterKg: hotWaterKg, spargeKg: 0 };
  }
  const mashWaterKg = Math.min(hotWaterKg, waterKg(recipe.thickness * sums.gristKg));
  return { mashWaterKg, spargeKg: hotWaterKg - mashWaterKg };
}
