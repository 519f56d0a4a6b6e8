import { requireInRange } from "../errors";
import { boilOffRate } from "../heat";
import {
  kilograms,
  kilogramsPerHour,
  minutes as minutesOf,
  type Celsius,
  type Kilograms,
  type KilogramsPerHour,
  type Minutes,
  type Watts,
  type WattsPerKelvin,
} from "../units";

/** A boil by the power of its heater. */
interface PoweredBoil {
  readonly wortKg: Kilograms;
  readonly minutes: Minutes;
  /** Power that reaches the wort. */
  readonly powerW: Watts;
  readonly lossCoefficient: WattsPerKelvin;
  readonly boilingC: Celsius;
  readonly ambientC: Celsius;
}

/** A boil by what was learned from earlier ones. */
interface LearnedBoil {
  readonly wortKg: Kilograms;
  readonly minutes: Minutes;
  readonly learnedRate: KilogramsPerHour;
}

export type BoilOff =
  | {
      readonly ok: true;
      readonly evaporatedKg: Kilograms;
      readonly leftKg: Kilograms;
      readonly rate: KilogramsPerHour;
    }
  | { readonly ok: false; readonly reason: "losses-exceed-power"; readonly missingW: Watts }
  | {
      readonly ok: false;
      readonly reason: "boils-dry";
      /** When nothing is left. */
      readonly afterMinutes: Minutes;
    };

/**
 * Finds what a boil evaporates, counted from the moment when the wort boils.
 *
 * Either from the power that the walls do not lose, over the heat of evaporation, or at a rate learned from the same
 * kettle, which also knows its lid, its chimney and its real power. A boil throws hot wort: leave the lid off or ajar,
 * keep clear of the steam and follow the rules for the heater in use.
 *
 * @returns Water evaporated and wort left, kg, and the rate, kg/h; or the power that is missing to boil at all; or when
 *   the kettle is dry.
 * @validRange Boiling point 0 to 102 °C, air −30 to 60 °C, up to 10 000 kg/h.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Energy balance (docs/sources.md#energy-balance); heat of evaporation: docs/sources.md#nist-steam-tables
 * @example
 * boilOff({ ...kettle, wortKg: kilograms(25), powerW: watts(2000), minutes: minutes(60) }); // 3.19 kg without losses
 */
export function boilOff(a: PoweredBoil | LearnedBoil): BoilOff {
  requireInRange("wort", a.wortKg, kilograms.range);
  requireInRange("time", a.minutes, minutesOf.range);
  const found = "learnedRate" in a ? learned(a) : boilOffRate(a);
  if (!found.ok) return found;
  const rate = found.kilogramsPerHour;
  const evaporatedKg = (rate * a.minutes) / 60;
  if (evaporatedKg > a.wortKg) {
    return { ok: false, reason: "boils-dry", afterMinutes: minutesOf((60 * a.wortKg) / rate) };
  }
  return { ok: true, evaporatedKg: kilograms(evaporatedKg), leftKg: kilograms(a.wortKg - evaporatedKg), rate };
}

function learned(a: LearnedBoil): { readonly ok: true; readonly kilogramsPerHour: KilogramsPerHour } {
  return { ok: true, kilogramsPerHour: requireInRange("boil-off", a.learnedRate, kilogramsPerHour.range) };
}
