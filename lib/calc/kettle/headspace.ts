import { requireInRange } from "../errors";
import { WORT_RANGE, wortDensity } from "../gravity";
import { celsius, litres, type Celsius, type DegreesPlato, type Litres } from "../units";

/** Share of the kettle that foam may take when the boil breaks through. Common practice, no source. */
export const FOAM_SHARE = 0.12;

export const KETTLE_RANGE = { ...litres.range, min: 0.1 } as const;

export type Headspace =
  | {
      readonly ok: true;
      /** Volume of the hot wort. */
      readonly hotLitres: number;
      /** Room left beside wort and foam. */
      readonly spareLitres: Litres;
      /** Largest wort, as measured at 20 °C, that leaves the room for foam. */
      readonly mostWort: Litres;
    }
  | {
      readonly ok: false;
      readonly reason: "boils-over";
      readonly hotLitres: number;
      /** What wort and foam have too much. */
      readonly overLitres: number;
      readonly mostWort: Litres;
    };

const AT_20 = celsius(20);

/**
 * Finds whether a kettle has room for its wort, hot, and for the foam of the first boil.
 *
 * Wort swells by 4 % up to the boil. When the hot break comes up the foam rises within seconds: keep watch, turn the heat
 * down in time and never lean over the kettle.
 *
 * @param a.capacity - Kettle to the rim, L.
 * @param a.wort - Wort before the boil, L at 20 °C.
 * @param a.plato - Its extract, °P.
 * @param a.celsius - Temperature at which it must fit, °C.
 * @param a.foam - Room for foam, L; 12 % of the kettle unless given.
 * @returns Volumes, L; or by how much wort and foam are too much.
 * @validRange Kettle from 0.1 L, −9 to 35 °P, 20 to 100 °C.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Conservation of mass; densities from docs/sources.md#kell-1975; foam: docs/sources.md#trade-practice
 * @example
 * headspace({ capacity: litres(40), wort: litres(33), plato: degreesPlato(11), celsius: celsius(100) }); // ok, 0.8 L spare
 */
export function headspace(a: {
  readonly capacity: Litres;
  readonly wort: Litres;
  readonly plato: DegreesPlato;
  readonly celsius: Celsius;
  readonly foam?: Litres;
}): Headspace {
  requireInRange("kettle", a.capacity, KETTLE_RANGE);
  requireInRange("wort", a.wort, litres.range);
  requireInRange("temperature", a.celsius, { ...WORT_RANGE.celsius, min: AT_20 });
  const foamL = requireInRange("room for foam", a.foam ?? FOAM_SHARE * a.capacity, {
    unit: "L",
    min: 0,
    max: a.capacity,
  });
  const cold = wortDensity({ plato: a.plato, celsius: AT_20 });
  const swelling = cold / wortDensity({ plato: a.plato, celsius: a.celsius });
  const hotLitres = a.wort * swelling;
  const spareL = a.capacity - foamL - hotLitres;
  const mostWort = litres((a.capacity - foamL) / swelling);
  if (spareL < 0) return { ok: false, reason: "boils-over", hotLitres, overLitres: -spareL, mostWort };
  return { ok: true, hotLitres, spareLitres: litres(spareL), mostWort };
}
