import { wortDensity } from "../gravity";
import { celsius, degreesPlato, type Fraction, type Kilograms, type Litres } from "../units";

export type Sparge = "none" | "batch" | "continuous" | "pour-over";

export type RunOff =
  | {
      readonly ok: true;
      /** Wort that ran off, kg, and the extract in it. */
      readonly kg: number;
      readonly extractKg: number;
      /** Wort that stayed in and under the grain. */
      readonly retainedKg: number;
      readonly retainedExtractKg: number;
      /** Share of the dissolved extract that ran off. */
      readonly efficiency: number;
    }
  | { readonly ok: false; readonly reason: "grain-holds-all-water"; readonly wortLitres: number };

const AT_20 = celsius(20);

const densityAt20 = (plato: number): number => wortDensity({ plato: degreesPlato(plato), celsius: AT_20 });

/** Mass of a given volume of wort that holds a given extract; the density depends on the answer, weakly. */
function retainedMass(litres: number, extractKg: number): number {
  let kg = litres;
  for (let i = 0; i < 4; i++) kg = litres * densityAt20(Math.min(35, (100 * extractKg) / kg));
  return kg;
}

/**
 * Drains a mash and washes the wort that the grain keeps.
 *
 * The grain keeps a constant volume. A batch sparge mixes with it perfectly once; continuous sparging and pouring over
 * a lifted basket wash it out as a stirred volume does, E = E₀ e^(−S/V), which is what ever smaller batches tend to.
 * A share of the sparge water runs past the grain and washes nothing.
 *
 * @param a.wort - All wort in the mash, kg: mash water, malt moisture and dissolved extract.
 * @param a.extract - Dissolved extract, kg.
 * @param a.retained - Wort that grain and dead space keep, L at 20 °C.
 * @param a.sparge - Sparge water, kg.
 * @param a.method - How the sparge water meets the grain; with `none` the sparge must be 0.
 * @param a.bypass - Share of the sparge water that washes nothing, fraction.
 * @returns Masses and extracts that ran off and stayed, kg; or that the grain holds all the wort.
 * @validRange Worts up to 35 °P; a stronger one is weighed with the density at 35 °P.
 * @throws {@link OutOfRangeError} when extract or wort makes no possible strength.
 * @source Two-stage mass balance (docs/sources.md#mass-balance)
 * @example
 * runOff({ wort: 29, extract: 4, retained: 5, sparge: 0, method: "none", bypass: 0 }); // efficiency 0.82…
 */
export function runOff(a: {
  readonly wort: Kilograms;
  readonly extract: Kilograms;
  readonly retained: Litres;
  readonly sparge: Kilograms;
  readonly method: Sparge;
  readonly bypass: Fraction;
}): RunOff {
  const firstPlato = a.wort > 0 ? (100 * a.extract) / a.wort : 0;
  const firstDensity = densityAt20(Math.min(35, firstPlato));
  const heldKg = a.retained * firstDensity;
  if (heldKg >= a.wort) return { ok: false, reason: "grain-holds-all-water", wortLitres: a.wort / firstDensity };

  const heldExtractKg = a.wort > 0 ? (a.extract * heldKg) / a.wort : 0;
  const washingKg = a.method === "none" ? 0 : a.sparge * (1 - a.bypass);
  const { kg: retainedKg, extractKg: retainedExtractKg } = wash(a, heldKg, heldExtractKg, washingKg);
  const extractKg = a.extract - retainedExtractKg;
  return {
    ok: true,
    kg: a.wort + a.sparge - retainedKg,
    extractKg,
    retainedKg,
    retainedExtractKg,
    efficiency: a.extract > 0 ? extractKg / a.extract : 1,
  };
}

function wash(
  a: { readonly retained: Litres; readonly method: Sparge },
  heldKg: number,
  heldExtractKg: number,
  washingKg: number,
): { kg: number; extractKg: number } {
  if (washingKg === 0 || a.retained === 0) return { kg: heldKg, extractKg: heldExtractKg };
  if (a.method === "batch") {
    const mixedPlato = (100 * heldExtractKg) / (heldKg + washingKg);
    const kg = a.retained * densityAt20(Math.min(35, mixedPlato));
    return { kg, extractKg: (kg * mixedPlato) / 100 };
  }
  const extractKg = heldExtractKg * Math.exp(-washingKg / (a.retained * densityAt20(0)));
  return { kg: retainedMass(a.retained, extractKg), extractKg };
}
