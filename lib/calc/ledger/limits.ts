import { mashVolume } from "../mash";
import { waterDensity } from "../gravity";
import { celsius, kilograms, litres } from "../units";
import type { DayPlan } from "./day-plan";
import type { Equipment } from "./equipment";
import type { GristSums } from "./grist-sums";
import type { KettleHeat } from "./kettle-heat";
import type { Limit, LimitId } from "./ledger";
import type { Dimension } from "./quantity-catalogue";
import { waterL, type Masses } from "./mass-balance";
import type { Recipe } from "./recipe";
import { runOffLitres } from "./volumes";

/** Rounding must not turn a brew away that fits to the millilitre. */
const SLACK = 1e-9;

/** Warmer wort harms yeast and some fermenters. Common practice, no source. */
const WARMEST_INTO_FERMENTER_C = 35;

/**
 * Finds the volume of one mash, grain included, at its warmest rest.
 *
 * @returns Volume, L.
 */
export function mashLitres(recipe: Recipe, masses: Masses, sums: GristSums): number {
  const warmest = recipe.mash.reduce((most, step) => Math.max(most, step.celsius), 20);
  const waterAtRest = masses.mashWaterKg / waterDensity(celsius(Math.min(100, warmest)));
  return mashVolume({ water: litres(waterAtRest / recipe.mashes), grist: kilograms(sums.gristKg / recipe.mashes) });
}

/** Strike water of one mash as hot as the kettle makes it, L. */
function strikeLitres({ waters }: DayPlan): number {
  const hottest = Math.min(100, Math.max(0, waters.strikeC ?? 100));
  return waters.strikeKg / waterDensity(celsius(hottest));
}

/**
 * Holds a brew against every physical limit of the equipment.
 *
 * @returns Each limit with the value, the bound and whether it is kept; a limit that does not apply is left out.
 * @source Geometry and power of the equipment as stated in its profile (docs/sources.md#trade-practice)
 */
export function limitsOf(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly sums: GristSums;
  readonly masses: Masses;
  readonly heat: KettleHeat;
  readonly day: DayPlan;
}): Limit[] {
  const { recipe, equipment, sums, masses, heat, day } = a;
  const { kettle, mash, fermenter } = equipment;
  const limits: Limit[] = [];
  const atMost = (id: LimitId, value: number, bound: number, dimension: Dimension): void => {
    limits.push({ id, value, bound, dimension, side: "at most", ok: value <= bound * (1 + SLACK) });
  };
  const atLeast = (id: LimitId, value: number, bound: number, dimension: Dimension): void => {
    limits.push({ id, value, bound, dimension, side: "at least", ok: value >= bound * (1 - SLACK) });
  };
  if (sums.gristKg > 0) {
    if (mash.grainLimit !== null) atMost("grain basket", sums.gristKg / recipe.mashes, mash.grainLimit, "mass");
    atMost("mash volume", mashLitres(recipe, masses, sums), mash.capacity, "volume");
    atLeast("mash thickness", waterL(masses.mashWaterKg) / sums.gristKg, mash.thickest, "thickness");
    const { strikeC } = day.waters;
    if (strikeC !== null) atMost("strike water", strikeC, heat.boilC, "temperature");
    // In a basket or a bag it is part of the mash, whose volume has a limit of its own.
    if (mash.kind === "tun") atMost("strike volume", strikeLitres(day), kettle.capacity, "volume");
    if (day.waters.infusionsKg.some((kg) => kg > 0)) {
      atLeast("mash steps", waterL(day.waters.strikeKg) / sums.gristKg, mash.thickest, "thickness");
    }
  }
  const covering =
    mash.kind === "tun" ? masses.runOffKg : Math.min(masses.mashWaterKg / recipe.mashes, masses.runOffKg);
  atLeast("element covered", waterL(covering), kettle.minimum, "volume");
  atMost("boil volume", runOffLitres(masses, heat.boilC), kettle.capacity - kettle.headspace, "volume");
  const { boilHeating } = day;
  atLeast("heater reaches the boil", boilHeating.ok ? heat.boilC : boilHeating.ceilingC, heat.boilC, "temperature");
  atLeast("heater holds the boil", heat.heatW, heat.leastBoilHeatW, "power");
  atMost("chilling", day.cooling.endC, WARMEST_INTO_FERMENTER_C, "temperature");
  atMost("fermenter", masses.fermenterL, fermenter.capacity - fermenter.headspace, "volume");
  atMost("carbonation", recipe.packaging.carbonation, recipe.packaging.rated, "carbonation");
  return limits;
}
