import { volumesCo2, type Celsius, type GramsPerLitre, type VolumesCo2 } from "../units";
import { co2FromExtract, type ExtractLeft } from "./co2-from-extract";
import { CO2_GRAMS_PER_VOLUME } from "./grams-per-litre-from-volumes";
import { residualCo2 } from "./residual-co2";

export type CarbonationAtEnd =
  | { readonly ok: true; readonly volumes: VolumesCo2; readonly fromExtract: GramsPerLitre }
  | { readonly ok: false; readonly reason: "above-any-container"; readonly fromExtract: GramsPerLitre };

/**
 * Finds how far beer carbonates itself when it is closed in before fermentation has ended.
 *
 * Half a degree Plato left is a volume of gas: this is how bottles burst. Hold the answer against the bottle with
 * `bottlePressure`, and take the final extract from a forced ferment rather than from hope. Priming sugar comes on top.
 *
 * @param a.originalPlato - Extract of the wort before fermentation, °P.
 * @param a.nowPlato - Apparent extract when the beer is closed in, °P.
 * @param a.finalPlato - Apparent extract where fermentation ends, °P.
 * @param a.celsius - Warmest temperature of the beer so far, °C, for the gas that it holds already.
 * @returns Carbonation in the end, volumes; or that it is more than 10 volumes, which no container holds.
 * @validRange Original extract 0 to 35 °P; readings as for `alcoholByWeight`; −2 to 45 °C.
 * @throws {@link OutOfRangeError} when an extract or the temperature is outside its range or the extract would rise.
 * @source Balling 1865 (docs/sources.md#balling-1865)
 * @example
 * carbonationAtEnd({ originalPlato: degreesPlato(12), nowPlato: degreesPlato(3.5), finalPlato: degreesPlato(3), celsius: celsius(18) }); // 1.91
 */
export function carbonationAtEnd(a: ExtractLeft & { readonly celsius: Celsius }): CarbonationAtEnd {
  const fromExtract = co2FromExtract(a);
  const volumes = residualCo2(a.celsius) + fromExtract / CO2_GRAMS_PER_VOLUME;
  if (volumes > volumesCo2.range.max) return { ok: false, reason: "above-any-container", fromExtract };
  return { ok: true, volumes: volumesCo2(volumes), fromExtract };
}
