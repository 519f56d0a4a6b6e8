import { requireInRange } from "../errors";
import { waterDensity } from "../gravity";
import { GRAIN_DISPLACEMENT } from "../mash";
import {
  celsius,
  fraction,
  joulesPerKelvin,
  joulesPerKilogramKelvin,
  kilograms,
  litres,
  type Celsius,
  type Fraction,
  type JoulesPerKelvin,
  type JoulesPerKilogramKelvin,
  type Kilograms,
  type Litres,
} from "../units";
import { LEAST_LEAD_K } from "./infusion-volume";
import { MALT_HEAT_CAPACITY, MIXING_RANGE } from "./strike-temperature";
import { WATER_HEAT_CAPACITY } from "./wort-heat-capacity";

export type DecoctionVolume =
  | {
      readonly ok: true;
      /** Mash to draw, grain and liquid in the mash's own mixture, as measured at 20 °C. */
      readonly litres: Litres;
      /** The same as a share of the mash. */
      readonly share: Fraction;
    }
  | {
      readonly ok: false;
      readonly reason: "more-than-the-mash";
      /** What the whole mash would come to if all of it were heated and put back into the vessel. */
      readonly highestC: Celsius;
    };

const WATER_KG_PER_L = waterDensity(celsius(20));

/**
 * Finds how much of the mash to draw, heat and put back, so that the whole comes to its next temperature.
 *
 * A heat balance: what the returned part gives, the rest and the vessel take. What cools while it is drawn and poured is
 * left out; brewers draw a tenth or two more than this. The part boiled is as thick as the mash; a thick one holds less
 * heat in a litre.
 *
 * @returns Mash, L at 20 °C and as a share of all; or the temperature that even the whole mash would not pass.
 * @validRange −20 to 102 °C, `toC` between `fromC` and 0.1 K below `decoctionC`, at least 0.001 kg of water. Grain heat
 *   capacity is 1717 J/(kg·K) unless given.
 * @throws {@link OutOfRangeError} when an argument is outside the valid range.
 * @source Heat balance (docs/sources.md#energy-balance); malt: Brewing Room Book (docs/sources.md#brewing-room-book-1985)
 * @example
 * decoctionVolume({ ...mash, fromC: celsius(52), toC: celsius(65), decoctionC: celsius(100) }); // share 0.27 without a vessel
 */
export function decoctionVolume({
  fromC,
  toC,
  decoctionC,
  grainKg,
  waterKg,
  vesselHeatCapacity,
  grainHeatCapacity = MALT_HEAT_CAPACITY,
}: {
  readonly fromC: Celsius;
  readonly toC: Celsius;
  readonly decoctionC: Celsius;
  readonly grainKg: Kilograms;
  readonly waterKg: Kilograms;
  readonly vesselHeatCapacity: JoulesPerKelvin;
  readonly grainHeatCapacity?: JoulesPerKilogramKelvin;
}): DecoctionVolume {
  requireInRange("mash temperature", fromC, MIXING_RANGE.celsius);
  requireInRange("decoction temperature", decoctionC, { ...MIXING_RANGE.celsius, min: fromC + LEAST_LEAD_K });
  requireInRange("target temperature", toC, { unit: "°C", min: fromC, max: decoctionC - LEAST_LEAD_K });
  requireInRange("grain", grainKg, kilograms.range);
  requireInRange("mash water", waterKg, MIXING_RANGE.water);
  requireInRange("grain specific heat", grainHeatCapacity, joulesPerKilogramKelvin.range);
  requireInRange("vessel heat capacity", vesselHeatCapacity, joulesPerKelvin.range);
  const mashJPerK = grainKg * grainHeatCapacity + waterKg * WATER_HEAT_CAPACITY;
  const share = ((mashJPerK + vesselHeatCapacity) * (toC - fromC)) / (mashJPerK * (decoctionC - fromC));
  if (share > 1) {
    const riseK = ((decoctionC - fromC) * mashJPerK) / (mashJPerK + vesselHeatCapacity);
    return { ok: false, reason: "more-than-the-mash", highestC: celsius(fromC + riseK) };
  }
  const mashL = waterKg / WATER_KG_PER_L + GRAIN_DISPLACEMENT * grainKg;
  return { ok: true, litres: litres(share * mashL), share: fraction(share) };
}
