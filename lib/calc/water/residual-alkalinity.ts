import { requireInRange } from "../errors";
import { defineQuantity, milligramsPerLitre, type MilligramsPerLitre, type Quantity } from "../units";
import { CALCIUM_CARBONATE_EQUIVALENT, MOLAR_MASS, VALENCE } from "./molar-mass";

export type ResidualAlkalinity = Quantity<"mg/L CaCO3">;

/** Negative where calcium and magnesium outweigh the alkalinity. */
const residual = defineQuantity("residual alkalinity", { unit: "mg/L CaCO3", min: -15000, max: 10000 });

/**
 * Gives the alkalinity that is left after calcium and magnesium have reacted with malt phosphates (Kolbach).
 *
 * Kolbach measured knocked-out wort of 12 °P, where +10 °dH raised the pH by 0.3; in the mash the shift differs by malt.
 *
 * @returns Residual alkalinity, mg/L as CaCO3; negative in soft, calcium-rich water.
 * @validRange 0 to 10 000 mg/L of each.
 * @throws {@link OutOfRangeError} when an ion or the alkalinity is outside the valid range.
 * @source Kolbach 1953, Monatsschr. Brauerei 6:49 (docs/sources.md#kolbach-1953)
 * @example
 * residualAlkalinity({ calciumMgL: mgL(70), magnesiumMgL: mgL(14), alkalinityMgLCaCO3: mgL(150) }); // 91.82
 */
export function residualAlkalinity({
  calciumMgL,
  magnesiumMgL,
  alkalinityMgLCaCO3,
}: {
  readonly calciumMgL: MilligramsPerLitre;
  readonly magnesiumMgL: MilligramsPerLitre;
  readonly alkalinityMgLCaCO3: MilligramsPerLitre;
}): ResidualAlkalinity {
  requireInRange("calcium", calciumMgL, milligramsPerLitre.range);
  requireInRange("magnesium", magnesiumMgL, milligramsPerLitre.range);
  requireInRange("alkalinity", alkalinityMgLCaCO3, { ...milligramsPerLitre.range, unit: "mg/L CaCO3" });
  const calciumMeqL = (calciumMgL * VALENCE.calcium) / MOLAR_MASS.calcium;
  const magnesiumMeqL = (magnesiumMgL * VALENCE.magnesium) / MOLAR_MASS.magnesium;
  return residual(alkalinityMgLCaCO3 - CALCIUM_CARBONATE_EQUIVALENT * (calciumMeqL / 3.5 + magnesiumMeqL / 7));
}
