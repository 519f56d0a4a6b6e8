import { alcoholByWeight, apparentRange } from "../alcohol";
import { requireInRange } from "../errors";
import { wortDensity } from "../gravity";
import { celsius, gramsPerLitre, type DegreesPlato, type GramsPerLitre } from "../units";

/** What a beer still has to ferment, as the hydrometer shows it. */
export interface ExtractLeft {
  /** Extract of the wort before fermentation, °P. */
  readonly originalPlato: DegreesPlato;
  /** Apparent extract now, °P. */
  readonly nowPlato: DegreesPlato;
  /** Apparent extract where fermentation ends, °P: of a forced ferment of the same wort. */
  readonly finalPlato: DegreesPlato;
}

/**
 * Finds the carbon dioxide that yeast makes between two readings of the hydrometer.
 *
 * Balling: with each gram of alcohol 0.9565 g of gas leave and 0.11 g of yeast grow. The short rule of 0.4629 g from each
 * gram between original and real extract gives some 2 % less: it forgets that the beer weighs less than its wort.
 *
 * @param a - Original extract, and apparent extract at the beginning and the end, °P.
 * @returns CO2 from a litre of wort, g/L; a litre of beer differs by less than 1 %.
 * @validRange Original extract 0 to 35 °P; readings as for `alcoholByWeight`, the later one not above the earlier.
 * @throws {@link OutOfRangeError} when an extract is outside its range or the extract would rise.
 * @source Balling 1865 (docs/sources.md#balling-1865)
 * @example
 * co2FromExtract({ originalPlato: degreesPlato(12), nowPlato: degreesPlato(3.5), finalPlato: degreesPlato(3) }); // 1.957
 */
export function co2FromExtract({ originalPlato, nowPlato, finalPlato }: ExtractLeft): GramsPerLitre {
  const before = gasFromWort(originalPlato, nowPlato);
  const after = gasFromWort(originalPlato, finalPlato);
  requireInRange("final extract", finalPlato, { ...apparentRange(originalPlato), max: nowPlato });
  // °P counts hundredths of the mass, 10 g in a kilogram.
  return gramsPerLitre(10 * wortDensity({ plato: originalPlato, celsius: celsius(20) }) * Math.max(0, after - before));
}

// Grams from 100 g of wort: the alcohol is a share of the beer, which is lighter by gas and yeast.
function gasFromWort(originalPlato: DegreesPlato, apparentPlato: DegreesPlato): number {
  const alcohol = alcoholByWeight({ originalPlato, apparentPlato });
  return (0.9565 * alcohol) / (1 + (0.9565 + 0.11) * (alcohol / 100));
}
