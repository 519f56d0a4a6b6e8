import { requireInRange } from "../errors";
import {
  litres as litresOf,
  type Celsius,
  type DegreesPlato,
  type GramsPerLitre,
  type Litres,
  type VolumesCo2,
} from "../units";
import { co2FromExtract } from "./co2-from-extract";
import { CO2_GRAMS_PER_VOLUME } from "./grams-per-litre-from-volumes";
import { PRIMED_RANGE } from "./priming-sugar";
import { residualCo2 } from "./residual-co2";

export type PrimingWort =
  | { readonly ok: true; readonly litres: Litres }
  /** All of the gas of the wort would not lift even the wort itself to the target. */
  | { readonly ok: false; readonly reason: "wort-too-weak"; readonly fromWort: GramsPerLitre };

/**
 * Measures the wort that carbonates beer in a closed container: saved wort (Speise) or wort in full ferment (Kräusen).
 *
 * The wort must carbonate itself as well as the beer, so more is needed than the gas missing in the beer alone would ask.
 * Saved wort holds no gas; wort in ferment holds as much as the beer. Too much bursts bottles: let the beer end first.
 *
 * @param a.litres - Beer, L.
 * @param a.celsius - Warmest temperature of the beer since fermentation ended, °C.
 * @param a.wortPlato - Extract of the added wort before fermentation, °P.
 * @param a.nowPlato - Its apparent extract when it is added, °P; left out for wort that has not begun to ferment.
 * @param a.finalPlato - Its apparent extract where fermentation ends, °P.
 * @returns Wort, L; 0 where the beer already holds as much gas; or that the wort cannot do it.
 * @validRange Target 0 to 6 volumes, −2 to 45 °C, wort 0 to 35 °P.
 * @throws {@link OutOfRangeError} when an amount is outside its range or the extract would rise.
 * @source Balling 1865 (docs/sources.md#balling-1865), mass balance (docs/sources.md#mass-balance)
 * @example
 * primingWort({ litres: litres(20), targetVolumes: volumesCo2(2.5), celsius: celsius(18), wortPlato: degreesPlato(12), finalPlato: degreesPlato(3) }); // 1.965 L
 */
export function primingWort(a: {
  readonly litres: Litres;
  readonly targetVolumes: VolumesCo2;
  readonly celsius: Celsius;
  readonly wortPlato: DegreesPlato;
  readonly nowPlato?: DegreesPlato;
  readonly finalPlato: DegreesPlato;
}): PrimingWort {
  requireInRange("volume", a.litres, litresOf.range);
  requireInRange("carbonation", a.targetVolumes, PRIMED_RANGE);
  const nowPlato = a.nowPlato ?? a.wortPlato;
  const fromWort = co2FromExtract({ originalPlato: a.wortPlato, nowPlato, finalPlato: a.finalPlato });
  const inBeer = residualCo2(a.celsius);
  const missing = a.targetVolumes - inBeer;
  if (missing <= 0 || a.litres === 0) return { ok: true, litres: litresOf(0) };

  // Gas that a litre of wort has to spare, in volumes, once it is carbonated itself.
  const held = a.nowPlato === undefined ? 0 : inBeer;
  const spare = fromWort / CO2_GRAMS_PER_VOLUME + held - a.targetVolumes;
  const needed = spare > 0 ? (a.litres * missing) / spare : Infinity;
  if (needed > litresOf.range.max) return { ok: false, reason: "wort-too-weak", fromWort };
  return { ok: true, litres: litresOf(needed) };
}
