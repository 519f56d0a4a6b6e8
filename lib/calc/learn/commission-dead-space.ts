import { requireInRange } from "../errors";
import { WATER_DENSITY_RANGE, waterDensity } from "../gravity";
import { celsius, litres, type Celsius, type Litres } from "../units";
import { READING_SD_RANGE, TRIAL_RANGE, type Estimate } from "./estimate";
import { fitTrial, type Scatter } from "./fit-trial";

/** Water that stayed behind once and was poured into a jug. */
export interface LeftBehind {
  readonly litres: Litres;
  readonly celsius: Celsius;
  /** Standard uncertainty, L. */
  readonly sd: number;
}

export type DeadSpaceTrial =
  | {
      readonly ok: true;
      /** At 20 °C. */
      readonly volume: Estimate<Litres>;
      readonly scatter: Scatter;
    }
  | { readonly ok: false; readonly reason: "no-readings" };

const AT_20 = celsius(20);

/**
 * Finds what stays behind when a vessel has run empty, from one or several collections of it.
 *
 * The weighted mean of the volumes at 20 °C. One collection has the uncertainty of the jug; several that scatter more
 * than that are widened by how much they do. Wort leaves more than water does: trub and hops lie on top of it.
 *
 * @returns Volume, L at 20 °C, with its standard error; or that there is nothing to go by.
 * @validRange Water of 0 to 100 °C, up to 500 collections.
 * @throws {@link OutOfRangeError} when a number is outside its range.
 * @source Weighted mean and Birge ratio (docs/sources.md#birge-1932); densities: docs/sources.md#kell-1975
 * @example
 * commissionDeadSpace({ readings: [{ litres: litres(1.2), celsius: celsius(20), sd: 0.05 }] }); // { ok: true, volume: { value: 1.2, standardError: 0.05 }, … }
 */
export function commissionDeadSpace({ readings }: { readonly readings: readonly LeftBehind[] }): DeadSpaceTrial {
  requireInRange("number of readings", readings.length, TRIAL_RANGE.readings);
  const cold = readings.map((reading) => {
    requireInRange("volume", reading.litres, litres.range);
    requireInRange("temperature", reading.celsius, WATER_DENSITY_RANGE);
    requireInRange("uncertainty of a volume", reading.sd, READING_SD_RANGE.litres);
    const shrinks = waterDensity(reading.celsius) / waterDensity(AT_20);
    return { litres: reading.litres * shrinks, sd: reading.sd * shrinks };
  });
  const [first] = cold;
  if (first === undefined) return { ok: false, reason: "no-readings" };
  const fit = fitTrial([{ start: first.litres, scale: 1 }], ([mean = 0]) =>
    cold.map((reading) => (reading.litres - mean) / reading.sd),
  );
  const mean = fit.ok ? fit.estimates[0] : undefined;
  if (!fit.ok || mean === undefined) throw new Error("a mean is always told");
  return {
    ok: true,
    volume: { value: litres(Math.max(0, mean.value)), standardError: mean.standardError },
    scatter: fit.scatter,
  };
}
