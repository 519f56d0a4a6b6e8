import { requireInRange } from "../errors";
import { milligramsPerLitre, type MilligramsPerLitre } from "../units";

/** The six ions that brewing water is described by, mg/L. */
export interface Ions {
  readonly calcium: MilligramsPerLitre;
  readonly magnesium: MilligramsPerLitre;
  readonly sodium: MilligramsPerLitre;
  readonly sulfate: MilligramsPerLitre;
  readonly chloride: MilligramsPerLitre;
  /** All alkalinity, expressed as bicarbonate. */
  readonly bicarbonate: MilligramsPerLitre;
}

export type Ion = keyof Ions;

export const IONS = [
  "calcium",
  "magnesium",
  "sodium",
  "sulfate",
  "chloride",
  "bicarbonate",
] as const satisfies readonly Ion[];

/**
 * Builds a water from a rule that gives each ion's concentration, and refuses what no water can hold.
 *
 * @param concentration - Concentration of one ion, mg/L.
 * @returns The six ions, mg/L.
 * @throws {@link OutOfRangeError} when a concentration is outside 0 to 10 000 mg/L.
 * @example
 * mapIons(() => 0).calcium; // 0
 */
export function mapIons(concentration: (ion: Ion) => number): Ions {
  const checked = (ion: Ion): MilligramsPerLitre =>
    milligramsPerLitre(requireInRange(ion, concentration(ion), milligramsPerLitre.range));
  return {
    calcium: checked("calcium"),
    magnesium: checked("magnesium"),
    sodium: checked("sodium"),
    sulfate: checked("sulfate"),
    chloride: checked("chloride"),
    bicarbonate: checked("bicarbonate"),
  };
}
