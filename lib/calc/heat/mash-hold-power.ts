import { OutOfRangeError, requireInRange } from "../errors";
import {
  fraction,
  squareMetres,
  watts,
  wattsPerKelvin,
  type Celsius,
  type Fraction,
  type SquareMetres,
  type Watts,
  type WattsPerKelvin,
} from "../units";
import { antoinePressure } from "./antoine";
import { EVAPORATION_RANGE, evaporativeLoss } from "./evaporation-flux";
import { STILL_AIR_SPEED } from "./still-air";

/**
 * Finds the power that holds a mash, or any other rest, at its temperature.
 *
 * It is what the walls lose and, without a lid, what evaporation carries off the open surface in still room air. The
 * heat of mashing itself is small and left out. Below the dew point water condenses instead, which is left out too.
 *
 * @param a.celsius - Temperature of the rest, °C.
 * @param a.openAreaM2 - Liquid surface open to the air, m²; 0 under a lid.
 * @returns Power into the mash, W; 0 where the room is as warm.
 * @validRange Rest 0 to 102 °C, air −30 to 60 °C, up to 10 MW.
 * @throws {@link OutOfRangeError} when an argument or the power is outside its range.
 * @source Energy balance (docs/sources.md#energy-balance); evaporation after Carrier (docs/sources.md#ashrae-carrier)
 * @example
 * mashHoldPower({ ...tun, celsius: celsius(66), lossCoefficient: wattsPerKelvin(6), openAreaM2: squareMetres(0) }); // 276 at 20 °C
 */
export function mashHoldPower({
  celsius,
  lossCoefficient,
  openAreaM2,
  ambientC,
  relativeHumidity,
}: {
  readonly celsius: Celsius;
  readonly lossCoefficient: WattsPerKelvin;
  readonly openAreaM2: SquareMetres;
  readonly ambientC: Celsius;
  readonly relativeHumidity: Fraction;
}): Watts {
  requireInRange("temperature", celsius, EVAPORATION_RANGE.celsius);
  requireInRange("heat loss", lossCoefficient, wattsPerKelvin.range);
  requireInRange("open area", openAreaM2, squareMetres.range);
  requireInRange("air temperature", ambientC, EVAPORATION_RANGE.ambient);
  requireInRange("relative humidity", relativeHumidity, fraction.range);
  const excessKPa = Math.max(0, antoinePressure(celsius) - relativeHumidity * antoinePressure(ambientC));
  const lossW = lossCoefficient * (celsius - ambientC) + openAreaM2 * evaporativeLoss(excessKPa, STILL_AIR_SPEED);
  if (lossW > watts.range.max) throw new OutOfRangeError("power", lossW, watts.range);
  return watts(Math.max(0, lossW));
}
