import { requireInRange } from "../errors";
import { fraction, ph as phOf, type Celsius, type Fraction, type Ph } from "../units";
import { carbonateConstants } from "./carbonate-constants";

/** Shares of the dissolved inorganic carbon; they add up to 1. */
export interface CarbonateFractions {
  /** Dissolved carbon dioxide and the little carbonic acid that it forms. */
  readonly carbonDioxide: Fraction;
  readonly bicarbonate: Fraction;
  readonly carbonate: Fraction;
}

/**
 * Splits dissolved inorganic carbon into carbon dioxide, bicarbonate and carbonate at a pH.
 *
 * Activities are taken as concentrations, which shifts pH by some 0.05 in a water of 500 mg/L.
 *
 * @returns Shares of the carbon, which add up to 1.
 * @validRange pH 0 to 14, 0 to 90 °C.
 * @throws {@link OutOfRangeError} when the pH or the temperature is outside the valid range.
 * @source Plummer and Busenberg 1982 (docs/sources.md#plummer-busenberg-1982)
 * @example
 * carbonateFractions({ ph: ph(5.4), celsius: celsius(25) }); // 0.8995, 0.1005 and 0.0000
 */
export function carbonateFractions({
  ph,
  celsius,
}: {
  readonly ph: Ph;
  readonly celsius: Celsius;
}): CarbonateFractions {
  requireInRange("pH", ph, phOf.range);
  const { pk1, pk2 } = carbonateConstants(celsius);
  const bicarbonate = 10 ** (ph - pk1);
  const carbonate = bicarbonate * 10 ** (ph - pk2);
  const all = 1 + bicarbonate + carbonate;
  return {
    carbonDioxide: fraction(1 / all),
    bicarbonate: fraction(bicarbonate / all),
    carbonate: fraction(carbonate / all),
  };
}
