import { requireInRange } from "../errors";
import type { MashCurve } from "../mash";
import type { Phase } from "./ledger";

/** A weak heater may take weeks, and a mash in the frost may begin below nothing. */
export const PHASE_RANGE = {
  minutes: { unit: "min", min: 0, max: 1e7 },
  celsius: { unit: "°C", min: -30, max: 130 },
} as const;

/**
 * Reads what one mash lived through out of the phases of the day: its rests and the heating between them.
 *
 * Draining and sparging are left out, as they are in the attenuation that yeast is described with.
 *
 * @param a.phases - Phases of the brew day in their order.
 * @returns Minutes from the first rest and °C, in straight lines; a step without time where boiling water was added.
 * Empty without a rest.
 * @validRange Any brew day of `brew`.
 * @throws {@link OutOfRangeError} when a phase of the mash is no time or no temperature.
 * @source Definition (docs/sources.md#energy-balance)
 * @example
 * mashCurveOf({ phases: ledger.phases }); // [[0, 66], [60, 66], [70.2, 76], [80.2, 76]]
 */
export function mashCurveOf({ phases }: { readonly phases: readonly Phase[] }): MashCurve {
  const curve: (readonly [number, number])[] = [];
  let minute = 0;
  for (const { name, minutes, fromC, toC } of phases) {
    // The second of two equal mashes is like the first.
    if (name === "lift and drain") break;
    if (name !== "rest" && name !== "heat between rests") continue;
    requireInRange("length of a phase", minutes, PHASE_RANGE.minutes);
    requireInRange("temperature of a phase", fromC, PHASE_RANGE.celsius);
    requireInRange("temperature of a phase", toC, PHASE_RANGE.celsius);
    if (curve.at(-1)?.[1] !== fromC) curve.push([minute, fromC]);
    minute += minutes;
    curve.push([minute, toC]);
  }
  return curve;
}
