import { OutOfRangeError, requireInRange } from "../errors";
import { WORT_RANGE, wortDensity } from "../gravity";
import { celsius, litres, type Celsius, type DegreesPlato, type Litres } from "../units";
import { LINEAR_EXPANSION, type VesselMaterial } from "./vessel-expansion";

/** Temperature at which every volume of the ledger is counted, and at which a kettle's marks are right, °C. */
const REFERENCE_C = 20;

/**
 * Turns a volume that was read hot into the volume of the same liquid at 20 °C.
 *
 * The mass stays; the density tells how far it shrinks. The kettle swells as well, so that its marks hold a little more
 * than they say: by 0.4 % for stainless steel at the boil. That is counted where the material is given, and ignored
 * where it is left out, as it should be for a jug that was not hot itself.
 *
 * @param a.litres - Volume as the marks say, L; the marks are right at 20 °C.
 * @param a.celsius - Temperature of the liquid, and of the vessel where its material is given, °C.
 * @param a.plato - Extract, °P; 0 for water.
 * @param a.vessel - What the vessel is made of; its expansion is ignored where this is left out.
 * @returns Volume at 20 °C, L: within 0.03 % of the steam tables for water.
 * @validRange −9 to 35 °P, 0 to 100 °C.
 * @throws {@link OutOfRangeError} when volume, temperature or strength is outside its range.
 * @source Conservation of mass (docs/sources.md#mass-balance); densities of docs/sources.md#kell-1975 and
 *   docs/sources.md#bubnik-1995; expansion of metals: docs/sources.md#crc-handbook
 * @example
 * volumeAtReference({ litres: litres(30), celsius: celsius(100), plato: degreesPlato(0) }); // 28.80
 */
export function volumeAtReference(a: {
  readonly litres: Litres;
  readonly celsius: Celsius;
  readonly plato: DegreesPlato;
  readonly vessel?: VesselMaterial;
}): Litres {
  requireInRange("volume", a.litres, litres.range);
  requireInRange("temperature", a.celsius, WORT_RANGE.celsius);
  const linearPerK = a.vessel === undefined ? 0 : LINEAR_EXPANSION[a.vessel];
  const heldL = a.litres * (1 + 3 * linearPerK * (a.celsius - REFERENCE_C));
  const hot = wortDensity({ plato: a.plato, celsius: a.celsius });
  const cold = wortDensity({ plato: a.plato, celsius: celsius(REFERENCE_C) });
  const coldL = (heldL * hot) / cold;
  if (coldL > litres.range.max) throw new OutOfRangeError("volume at 20 °C", coldL, litres.range);
  return litres(coldL);
}
