import { requireInRange } from "../errors";
import { ph as phOf, type Celsius, type Ph } from "../units";

export const HOT_PH_RANGE = { unit: "°C", min: 20, max: 80 } as const;
export const ROOM_PH_RANGE = { unit: "pH", min: 1, max: 14 } as const;

/**
 * Gives the pH that a mash has while it is hot from its pH at room temperature.
 *
 * Acids of the malt give off more as they warm: common practice says about 0.3 lower at 65 °C, and a straight line is
 * drawn through that. A meter's temperature compensation corrects the electrode, not this.
 *
 * @returns pH at `celsius`, within about 0.1.
 * @validRange pH 1 to 14 at 20 °C, 20 to 80 °C.
 * @throws {@link OutOfRangeError} when the pH or the temperature is outside the valid range.
 * @source Common practice, no source (docs/sources.md#trade-practice)
 * @example
 * mashPhAtTemperature({ ph: ph(5.4), celsius: celsius(65) }); // 5.1
 */
export function mashPhAtTemperature({ ph, celsius }: { readonly ph: Ph; readonly celsius: Celsius }): Ph {
  requireInRange("pH at room temperature", ph, ROOM_PH_RANGE);
  requireInRange("mash temperature", celsius, HOT_PH_RANGE);
  return phOf(ph - (0.3 * (celsius - 20)) / 45);
}
