import { requireInRange } from "../errors";
import {
  celsius,
  fraction,
  joulesPerKelvin,
  kilograms,
  kilowattHours,
  seconds,
  squareMetres,
  watts,
  wattsPerKelvin,
  type Celsius,
  type DegreesPlato,
  type Fraction,
  type JoulesPerKelvin,
  type Kilograms,
  type KilowattHours,
  type Seconds,
  type SquareMetres,
  type Watts,
  type WattsPerKelvin,
} from "../units";
import { EVAPORATION_RANGE } from "./evaporation-flux";
import { HeatedKettle } from "./heated-kettle";
import { WORT_HEAT_RANGE } from "./wort-heat-capacity";

/** A kettle that heats. */
export interface HeatUp {
  readonly massKg: Kilograms;
  readonly plato: DegreesPlato;
  readonly vesselHeatCapacity: JoulesPerKelvin;
  /** Power that reaches the liquid. */
  readonly powerW: Watts;
  /** Heat lost through the walls, per kelvin above the air. */
  readonly lossCoefficient: WattsPerKelvin;
  /** Liquid surface that is open to the air; 0 under a lid. */
  readonly openAreaM2: SquareMetres;
  readonly fromC: Celsius;
  readonly toC: Celsius;
  readonly ambientC: Celsius;
  readonly relativeHumidity: Fraction;
}

export type HeatUpOutcome =
  | {
      readonly ok: true;
      readonly seconds: Seconds;
      /** Energy that reached the liquid. */
      readonly energyKWh: KilowattHours;
      readonly evaporatedKg: Kilograms;
    }
  | {
      readonly ok: false;
      readonly reason: "losses-exceed-power";
      /** Where heating stalls. */
      readonly ceilingC: Celsius;
    };

const NOTHING: HeatUpOutcome = {
  ok: true,
  seconds: seconds(0),
  energyKWh: kilowattHours(0),
  evaporatedKg: kilograms(0),
};

/**
 * Finds how long a well-mixed kettle takes to heat, and what it evaporates on the way.
 *
 * C(m, T) dT/dt = P − U (T − Ta) − A·q(T), with q the heat that evaporation carries off the open surface in still
 * room air. Steps of fixed number, laid out by the falling surplus, so the answer holds close to a stall too.
 *
 * @param a - The kettle, its contents and its surroundings.
 * @returns Time, energy into the liquid and water evaporated, within 1e-6 of the equation; or the temperature where
 *   losses meet the power. Zero where `toC` is not above `fromC`.
 * @validRange 0 to 35 °P, 0 to 102 °C, air −30 to 60 °C.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Energy balance (docs/sources.md#energy-balance); evaporation after Carrier (docs/sources.md#ashrae-carrier)
 * @example
 * heatUp({ ...kettle, fromC: celsius(67), toC: celsius(100) }); // { ok: true, seconds: 1850, energyKWh: 1.3, … }
 */
export function heatUp(a: HeatUp): HeatUpOutcome {
  checkRanges(a);
  if (a.toC <= a.fromC) return NOTHING;
  const kettle = new HeatedKettle(a);
  if (!kettle.heatsTo(a.toC) || !kettle.run(a.fromC, a.toC)) {
    // Where it boils dry or takes for ever first, the losses meet the power only past the target.
    const ceilingC = celsius(Math.min(a.toC, kettle.ceiling(a.fromC, a.toC)));
    return { ok: false, reason: "losses-exceed-power", ceilingC };
  }
  return {
    ok: true,
    seconds: seconds(kettle.seconds),
    energyKWh: kilowattHours((a.powerW * kettle.seconds) / 3_600_000),
    evaporatedKg: kilograms(a.massKg - kettle.massKg),
  };
}

function checkRanges(a: HeatUp): void {
  requireInRange("mass", a.massKg, kilograms.range);
  requireInRange("extract", a.plato, WORT_HEAT_RANGE.plato);
  requireInRange("vessel heat capacity", a.vesselHeatCapacity, joulesPerKelvin.range);
  requireInRange("power", a.powerW, watts.range);
  requireInRange("heat loss", a.lossCoefficient, wattsPerKelvin.range);
  requireInRange("open area", a.openAreaM2, squareMetres.range);
  requireInRange("start temperature", a.fromC, WORT_HEAT_RANGE.celsius);
  requireInRange("target temperature", a.toC, WORT_HEAT_RANGE.celsius);
  requireInRange("air temperature", a.ambientC, EVAPORATION_RANGE.ambient);
  requireInRange("relative humidity", a.relativeHumidity, fraction.range);
}
