import { OutOfRangeError, requireInRange } from "../errors";
import { fraction, kilograms, litres, type Fraction, type Kilograms, type Litres } from "../units";
import { HeldWort, wortDensityAt20 } from "./held-wort";

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

export const PORTIONS_RANGE = { unit: "", min: 1, max: 1000 } as const;

/**
 * Stirred layers that a flooded grain bed counts as. One would be a stirred vessel and very many a sharp front; a bed of
 * a hand's breadth, with its channels left to `bypass`, lies near the former. Common practice, no source.
 */
export const BED_LAYERS = 3;

/**
 * Drains a mash and washes the wort that the grain keeps.
 *
 * What grain and dead space keep has a constant volume and at first the strength of the first wort. How the sparge meets
 * it makes the methods. `batch`: the mash drains, the water is stirred in, mixes perfectly and drains; once, or in equal
 * portions. `pour-over`: the basket is lifted and drained, and the water trickles through grain that hangs free, which
 * washes it out as one stirred volume, E = E₀ e^(−S/V): the limit of ever more batches. `continuous`: the bed stays
 * flooded while water runs on at the top and wort runs off below, so each of its layers is washed by what leaves the one
 * above. In each, a share of the water runs past the grain (walls, channels, the gap around a basket) and washes nothing.
 *
 * @param a.wort - All wort in the mash, kg: mash water, malt moisture and dissolved extract.
 * @param a.extract - Dissolved extract, kg.
 * @param a.retained - Wort that grain and dead space keep, L at 20 °C.
 * @param a.sparge - Sparge water, kg.
 * @param a.method - How the sparge water meets the grain; with `none` the sparge must be 0.
 * @param a.bypass - Share of the sparge water that washes nothing, fraction.
 * @param a.portions - Equal portions of a batch sparge, a whole number; 1 unless given. The others do not look at it.
 * @returns Masses and extracts that ran off and stayed, kg; or that the grain holds all the wort.
 * @validRange Extract up to the mass of the wort; worts stronger than 35 °P are weighed with the density at 35 °P.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Mass balance of mixing and draining (docs/sources.md#mass-balance)
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
  readonly portions?: number;
}): RunOff {
  requireInRange("wort in the mash", a.wort, kilograms.range);
  requireInRange("dissolved extract", a.extract, { unit: "kg", min: 0, max: a.wort });
  requireInRange("wort kept by the grain", a.retained, litres.range);
  requireInRange("sparge water", a.sparge, a.method === "none" ? NO_SPARGE : kilograms.range);
  requireInRange("bypass", a.bypass, fraction.range);

  const firstPlato = a.wort > 0 ? (100 * a.extract) / a.wort : 0;
  const firstDensity = wortDensityAt20(firstPlato);
  const heldKg = a.retained * firstDensity;
  if (heldKg >= a.wort) return { ok: false, reason: "grain-holds-all-water", wortLitres: a.wort / firstDensity };

  const held = new HeldWort(a.retained, heldKg, (a.extract * heldKg) / a.wort);
  const washingKg = a.sparge * (1 - a.bypass);
  if (a.method === "batch") held.washInPortions(washingKg, portionsOf(a.portions ?? 1));
  else held.washOut(washingKg, a.method === "continuous" ? BED_LAYERS : 1);
  const extractKg = a.extract - held.extractKg;
  return {
    ok: true,
    kg: a.wort + a.sparge - held.kg,
    extractKg,
    retainedKg: held.kg,
    retainedExtractKg: held.extractKg,
    efficiency: a.extract > 0 ? extractKg / a.extract : 1,
  };
}

const NO_SPARGE = { unit: "kg", min: 0, max: 0 } as const;

function portionsOf(portions: number): number {
  requireInRange("portions", portions, PORTIONS_RANGE);
  if (!Number.isInteger(portions)) throw new OutOfRangeError("portions", portions, PORTIONS_RANGE);
  return portions;
}
