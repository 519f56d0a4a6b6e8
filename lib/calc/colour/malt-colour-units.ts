import { requireInRange } from "../errors";
import {
  defineQuantity,
  kilograms,
  litres as litresOf,
  lovibond as lovibondOf,
  type Kilograms,
  type Litres,
  type Lovibond,
  type Quantity,
} from "../units";

export type MaltColourUnits = Quantity<"°L·lb/US gal">;

const maltColour = defineQuantity("malt colour units", { unit: "°L·lb/US gal", min: 0, max: 100000 });

/** A malt by what it brings to the colour. */
export interface ColouringMalt {
  readonly kg: Kilograms;
  readonly lovibond: Lovibond;
}

/** A kilogram in a litre, lb/US gal: exact gallon over exact pound. */
export const POUNDS_PER_GALLON = 3.785411784 / 0.45359237;

/** Too little wort to brew; the quotient grows without bound. */
export const VOLUME_RANGE = { ...litresOf.range, min: 0.1 } as const;

/**
 * Adds up the colour of a grist in the US unit of the colour formulas.
 *
 * @param a.malts - Each malt's mass, kg, and colour, °L.
 * @param a.litres - Wort that they colour, L.
 * @returns Malt colour units, °L·lb/US gal.
 * @validRange 0.1 to 100 000 L.
 * @throws {@link OutOfRangeError} when an amount, a colour or the result is outside its range.
 * @source Definition, exact units of NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * maltColourUnits({ malts: [{ kg: kilograms(5), lovibond: lovibond(4) }], litres: litres(20) }); // 8.345
 */
export function maltColourUnits({
  malts,
  litres,
}: {
  readonly malts: readonly ColouringMalt[];
  readonly litres: Litres;
}): MaltColourUnits {
  requireInRange("volume", litres, VOLUME_RANGE);
  let kgLovibond = 0;
  for (const { kg, lovibond } of malts) {
    kgLovibond +=
      requireInRange("mass", kg, kilograms.range) * requireInRange("malt colour", lovibond, lovibondOf.range);
  }
  return maltColour((kgLovibond * POUNDS_PER_GALLON) / litres);
}
