import { OutOfRangeError, requireInRange } from "../errors";
import { kilograms, litres, litresPerKilogram, type Kilograms, type Litres, type LitresPerKilogram } from "../units";

/** Wort that a kilogram of hops keeps, drained but not squeezed, L/kg. Common practice, no source. */
export const HOP_ABSORPTION = { pellets: litresPerKilogram(6), cones: litresPerKilogram(10) } as const;

/**
 * Finds the wort that spent hops keep.
 *
 * Pellets settle into a paste, whole cones hold more between their leaves. A hop bag that is squeezed gives part of it
 * back; a figure learned from one's own kettle then stands in for both.
 *
 * @param a.pelletsKg - Pellets in the kettle, kg.
 * @param a.conesKg - Whole hops in the kettle, kg.
 * @param a.learned - Absorption of this kettle, L/kg, in place of the usual 6 for pellets and 10 for cones.
 * @returns Wort, L at 20 °C.
 * @validRange Wort up to 100 000 L.
 * @throws {@link OutOfRangeError} when an argument or the wort is outside its range.
 * @source Common practice, no source (docs/sources.md#trade-practice)
 * @example
 * hopAbsorption({ pelletsKg: kilograms(0.1), conesKg: kilograms(0.05) }); // 1.1
 */
export function hopAbsorption({
  pelletsKg,
  conesKg,
  learned,
}: {
  readonly pelletsKg: Kilograms;
  readonly conesKg: Kilograms;
  readonly learned?: LitresPerKilogram;
}): Litres {
  requireInRange("pellets", pelletsKg, kilograms.range);
  requireInRange("whole hops", conesKg, kilograms.range);
  if (learned !== undefined) requireInRange("absorption", learned, litresPerKilogram.range);
  const heldL = (learned ?? HOP_ABSORPTION.pellets) * pelletsKg + (learned ?? HOP_ABSORPTION.cones) * conesKg;
  if (heldL > litres.range.max) throw new OutOfRangeError("wort in the hops", heldL, litres.range);
  return litres(heldL);
}
