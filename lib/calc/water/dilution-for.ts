import { requireInRange } from "../errors";
import { fraction, milligramsPerLitre, type Fraction } from "../units";
import { IONS, type Ion, type Ions } from "./ions";

/** How much of a water has to give way to demineralised water. */
export interface Dilution {
  /** Share of demineralised water in the blend. */
  readonly demineralised: Fraction;
  /** The ion that asks for it; null where the source is nowhere above the target. */
  readonly ion: Ion | null;
}

/**
 * Finds the least share of demineralised water that brings every ion of a water down to a target.
 *
 * Salts only add, so this is the least from which salts can make up the rest.
 *
 * @returns The share, and the ion that decides it.
 * @validRange 0 to 10 000 mg/L of each ion.
 * @throws {@link OutOfRangeError} when an ion is outside the valid range.
 * @source Mass balance (docs/sources.md#mass-balance)
 * @example
 * dilutionFor({ source: tapWater, target }); // { demineralised: 0.4, ion: "calcium" } for 80 down to 48 mg/L
 */
export function dilutionFor({ source, target }: { readonly source: Ions; readonly target: Ions }): Dilution {
  let most = 0;
  let decides: Ion | null = null;
  for (const ion of IONS) {
    const have = requireInRange(`${ion} of the source`, source[ion], milligramsPerLitre.range);
    const want = requireInRange(`${ion} of the target`, target[ion], milligramsPerLitre.range);
    const share = have > want ? 1 - want / have : 0;
    if (share > most) {
      most = share;
      decides = ion;
    }
  }
  return { demineralised: fraction(most), ion: decides };
}
