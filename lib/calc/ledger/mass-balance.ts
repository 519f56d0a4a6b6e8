import { waterDensity, wortDensity } from "../gravity";
import { runOff } from "../lauter";
import { celsius, degreesPlato, kilograms, litres } from "../units";
import type { Equipment } from "./equipment";
import type { GristSums } from "./grist-sums";
import type { Recipe } from "./recipe";

/** Masses at every station for a given amount of water, kg unless the name says otherwise. */
export interface Masses {
  readonly mashWaterKg: number;
  readonly spargeKg: number;
  readonly wortKg: number;
  readonly retainedL: number;
  readonly retainedKg: number;
  readonly retainedExtractKg: number;
  readonly runOffKg: number;
  readonly runOffExtractKg: number;
  readonly lauterEfficiency: number;
  readonly evaporatedKg: number;
  readonly postBoilKg: number;
  readonly postBoilExtractKg: number;
  readonly leftL: number;
  readonly leftKg: number;
  readonly topUpKg: number;
  readonly fermenterKg: number;
  readonly fermenterExtractKg: number;
  readonly fermenterL: number;
}

const AT_20 = celsius(20);
const WATER_20 = waterDensity(AT_20);
const STRONGEST_PLATO = 35;

/**
 * Density at 20 °C; a passing guess of the solver may be stronger than any wort, and stops at the end of the range.
 *
 * @returns Density, kg/L.
 */
export const densityAt20 = (plato: number): number =>
  wortDensity({ plato: degreesPlato(Math.min(STRONGEST_PLATO, Math.max(0, plato))), celsius: AT_20 });

/**
 * Weighs water.
 *
 * @returns Mass of litres at 20 °C, kg.
 */
export const waterKg = (litresAt20: number): number => litresAt20 * WATER_20;

/**
 * Measures water out.
 *
 * @returns Volume of a mass, L at 20 °C.
 */
export const waterL = (kg: number): number => kg / WATER_20;

/**
 * Finds the wort that the kettle keeps: trub, hops, chiller and hoses.
 *
 * @returns Volume, L at 20 °C.
 */
export function leftInKettleL(sums: GristSums, equipment: Equipment): number {
  return (
    equipment.kettle.trub.value + equipment.kettle.transfer.value + equipment.hopAbsorption.value * sums.kettleHopsKg
  );
}

/**
 * Finds the wort that grain and dead space keep; each mash leaves the dead space full.
 *
 * @returns Volume, L at 20 °C.
 */
export function retainedL(recipe: Recipe, sums: GristSums, equipment: Equipment): number {
  if (sums.gristKg === 0) return 0;
  return equipment.lauter.absorption.value * sums.gristKg + recipe.mashes * equipment.lauter.deadSpace.value;
}

/**
 * Follows mass and extract from given waters to the fermenter.
 *
 * @returns All masses, or the wort volume that is too little to run off.
 * @source Mass balance (docs/sources.md#mass-balance)
 */
export function massBalance(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly sums: GristSums;
  readonly mashWaterKg: number;
  readonly spargeKg: number;
  readonly evaporatedKg: number;
}): Masses | { readonly wortLitres: number } {
  const { recipe, equipment, sums, mashWaterKg, spargeKg, evaporatedKg } = a;
  const wortKg = mashWaterKg + sums.maltWaterKg + sums.dissolvedKg;
  const retained = retainedL(recipe, sums, equipment);
  const drained = runOff({
    wort: kilograms(wortKg),
    extract: kilograms(sums.dissolvedKg),
    retained: litres(retained),
    sparge: kilograms(spargeKg),
    method: equipment.lauter.method,
    bypass: equipment.lauter.bypass.value,
  });
  if (!drained.ok) return { wortLitres: drained.wortLitres };

  const postBoilKg = drained.kg + sums.addedKg - evaporatedKg;
  const postBoilExtractKg = drained.extractKg + sums.addedExtractKg;
  const leftL = leftInKettleL(sums, equipment);
  const leftKg = leftL * densityAt20((100 * postBoilExtractKg) / postBoilKg);
  const topUpKg = waterKg(recipe.topUp);
  const fermenterKg = postBoilKg - leftKg + topUpKg;
  const fermenterExtractKg = postBoilExtractKg * (1 - leftKg / postBoilKg);
  return {
    mashWaterKg,
    spargeKg,
    wortKg,
    retainedL: retained,
    retainedKg: drained.retainedKg,
    retainedExtractKg: drained.retainedExtractKg,
    runOffKg: drained.kg,
    runOffExtractKg: drained.extractKg,
    lauterEfficiency: drained.efficiency,
    evaporatedKg,
    postBoilKg,
    postBoilExtractKg,
    leftL,
    leftKg,
    topUpKg,
    fermenterKg,
    fermenterExtractKg,
    fermenterL: fermenterKg / densityAt20((100 * fermenterExtractKg) / fermenterKg),
  };
}
