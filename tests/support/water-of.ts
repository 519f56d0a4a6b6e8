import type { Ions } from "@/lib/calc/water";
import { milligramsPerLitre } from "@/lib/calc/units";

/** A water with the ions named, mg/L, and none of the others. */
export function waterOf(ions: Partial<Record<keyof Ions, number>>): Ions {
  const of = (ion: keyof Ions): Ions["calcium"] => milligramsPerLitre(ions[ion] ?? 0);
  return {
    calcium: of("calcium"),
    magnesium: of("magnesium"),
    sodium: of("sodium"),
    sulfate: of("sulfate"),
    chloride: of("chloride"),
    bicarbonate: of("bicarbonate"),
  };
}
