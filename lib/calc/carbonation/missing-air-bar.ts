import { airPressure } from "../heat";
import type { Metres } from "../units";

/**
 * Gives what the air at an altitude presses less than at sea level.
 *
 * @returns Missing pressure, bar; below sea level less than none.
 * @throws {@link OutOfRangeError} when the altitude is outside −450 to 6000 m.
 */
export function missingAirBar(altitudeM: Metres): number {
  return (101.325 - airPressure({ altitudeM })) / 100;
}
