import { OutOfRangeError, requireInRange } from "../errors";
import { volts, watts, type Volts, type Watts } from "../units";

export const RATED_VOLTAGE_RANGE = { unit: "V", min: 1, max: 1000 } as const;

/**
 * Finds what a heating element draws on a supply that is not the one it is rated for.
 *
 * Its resistance is taken as constant, so power goes with the square of the voltage.
 *
 * @returns Power, W.
 * @validRange Rated voltage 1 to 1000 V, supply 0 to 1000 V, up to 10 MW.
 * @throws {@link OutOfRangeError} when a voltage or the power is outside its range.
 * @source Ohm's law: P = V²/R (docs/sources.md#energy-balance)
 * @example
 * elementPower({ ratedW: watts(2500), ratedV: volts(240), supplyV: volts(230) }); // 2296
 */
export function elementPower({
  ratedW,
  ratedV,
  supplyV,
}: {
  readonly ratedW: Watts;
  readonly ratedV: Volts;
  readonly supplyV: Volts;
}): Watts {
  requireInRange("rated power", ratedW, watts.range);
  requireInRange("rated voltage", ratedV, RATED_VOLTAGE_RANGE);
  requireInRange("supply voltage", supplyV, volts.range);
  const drawnW = ratedW * (supplyV / ratedV) ** 2;
  if (drawnW > watts.range.max) throw new OutOfRangeError("power", drawnW, watts.range);
  return watts(drawnW);
}
