import { requireInRange } from "../errors";
import { grams, litres as litresOf, type Celsius, type Grams, type Litres, type VolumesCo2 } from "../units";
import { CO2_GRAMS_PER_VOLUME } from "./grams-per-litre-from-volumes";
import { residualCo2 } from "./residual-co2";

export type PrimingSugarKind = "sucrose" | "dextroseMonohydrate" | "dextroseAnhydrous";

/** Grams of CO2 from a gram of sugar that ferments wholly: two molecules from each glucose. */
export const CO2_FROM_SUGAR: Readonly<Record<PrimingSugarKind, number>> = {
  sucrose: (4 * 44.009) / 342.297,
  dextroseMonohydrate: (2 * 44.009) / 198.171,
  dextroseAnhydrous: (2 * 44.009) / 180.156,
};

const YIELD_RANGE = { unit: "g/g", min: 0.1, max: 0.6 } as const;

/** No bottle of the trade is made for more. */
export const PRIMED_RANGE = { unit: "volumes", min: 0, max: 6 } as const;

/**
 * Weighs the sugar that carbonates beer in a closed bottle or keg.
 *
 * Whole fermentation to alcohol and gas; yeast growth would take about 5 % more sugar for the same gas. Too much sugar
 * bursts bottles: weigh it, let fermentation end first, and keep to what the maker of the bottle states.
 *
 * @param a.celsius - Warmest temperature of the beer since fermentation ended, °C.
 * @returns Sugar, g; 0 where the beer already holds as much gas.
 * @validRange Target 0 to 6 volumes, −2 to 45 °C.
 * @throws {@link OutOfRangeError} when an amount is outside its range or the sugar is none of the three.
 * @source Stoichiometry, atomic weights of IUPAC 2021 (docs/sources.md#iupac-2021)
 * @example
 * primingSugar({ litres: litres(23), targetVolumes: volumesCo2(2.7), celsius: celsius(18), sugar: "sucrose" }); // 156
 */
export function primingSugar({
  litres,
  targetVolumes,
  celsius,
  sugar,
}: {
  readonly litres: Litres;
  readonly targetVolumes: VolumesCo2;
  readonly celsius: Celsius;
  readonly sugar: PrimingSugarKind;
}): Grams {
  requireInRange("volume", litres, litresOf.range);
  requireInRange("carbonation", targetVolumes, PRIMED_RANGE);
  // A caller without types may name another sugar, whose yield is then no number.
  const gasPerGram = requireInRange("gas from the sugar", CO2_FROM_SUGAR[sugar], YIELD_RANGE);
  const missing = Math.max(0, targetVolumes - residualCo2(celsius));
  return grams((litres * missing * CO2_GRAMS_PER_VOLUME) / gasPerGram);
}
