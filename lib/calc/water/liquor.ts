import { requireInRange } from "../errors";
import { grams as gramsOf, type Litres, type Ph } from "../units";
import { protonsAt } from "./acids";
import type { Ions } from "./ions";
import { TREATED_WATER_RANGE } from "./ions-from-salts";
import { MOLAR_MASS, VALENCE } from "./molar-mass";
import { requireIons } from "./require-ions";
import { SALTS, SALT_CHEMISTRY, type Salt, type SaltGrams } from "./salts";

/** Brewing water as it meets the malt: what was analysed, and the salts that go into it. */
export interface Liquor {
  readonly litres: Litres;
  /** As analysed, before the salts. */
  readonly ions: Ions;
  /** As analysed; it says how much carbon dioxide stands behind the alkalinity. */
  readonly ph: Ph;
  readonly salts: SaltGrams;
  /**
   * `kept`: what acid sets free stays dissolved, as in a still mash, and holds back a tenth of the alkalinity at pH 5.4.
   * `lost`: hot and stirred water has driven it off, so that all of the alkalinity counts.
   */
  readonly carbonDioxide: "kept" | "lost";
}

/** Outside it something else than carbon dioxide and lime has set the pH of a water. */
export const LIQUOR_PH_RANGE = { unit: "pH", min: 5, max: 10.5 } as const;

/** What of a water takes part in the balance of protons, for all of its volume. */
export interface LiquorCharge {
  readonly litres: number;
  readonly alkalinityMeq: number;
  /** Dissolved inorganic carbon that stays. */
  readonly carbonMmol: number;
  readonly calciumMeq: number;
  readonly magnesiumMeq: number;
}

// At 25 °C, as pH is read: pK of docs/sources.md#plummer-busenberg-1982 and of water, docs/sources.md#crc-handbook.
const K1 = 10 ** -6.352;
const K2 = 10 ** -10.329;
const KW = 10 ** -13.995;

/** Moles of carbon in a mole of salt; slaked lime has none. */
const CARBON: Readonly<Partial<Record<Salt, number>>> = { bakingSoda: 1, chalk: 1 };

/**
 * Gives the alkalinity that a water still has at a pH.
 *
 * @param protons - Hydrogen ions, mol/L.
 * @returns Alkalinity, mEq; below zero where free acid is left.
 * @example
 * alkalinityAt({ litres: 10, carbonMmol: 30 }, 10 ** -5.4); // 2.98
 */
export function alkalinityAt(
  { litres, carbonMmol }: Pick<LiquorCharge, "litres" | "carbonMmol">,
  protons: number,
): number {
  return carbonMmol * equivalentsPerCarbon(protons) + 1000 * litres * (KW / protons - protons);
}

// Bicarbonate carries one equivalent and carbonate two.
function equivalentsPerCarbon(protons: number): number {
  const bicarbonate = K1 / protons;
  const carbonate = (bicarbonate * K2) / protons;
  return (bicarbonate + 2 * carbonate) / (1 + bicarbonate + carbonate);
}

/**
 * Counts alkalinity, carbon, calcium and magnesium of a water with its salts.
 *
 * Alkalinity is the base of the strong ions: chalk and slaked lime bring two equivalents a mole and baking soda one,
 * but the carbon they bring differs, and with it the pH.
 *
 * @returns Amounts in the whole volume, mEq and mmol.
 * @throws {@link OutOfRangeError} when a volume, an ion, a mass or the pH is outside its range.
 * @example
 * liquorCharge({ ...tapWater, litres: litres(15), ph: ph(7.5), salts: {}, carbonDioxide: "kept" }).alkalinityMeq; // 30
 */
export function liquorCharge({ litres, ions, ph, salts, carbonDioxide }: Liquor): LiquorCharge {
  requireInRange("water", litres, TREATED_WATER_RANGE);
  const protons = protonsAt(requireInRange("pH of the water", ph, LIQUOR_PH_RANGE));
  requireIons(ions);
  const meqOf = (ion: keyof Ions): number => (litres * ions[ion] * VALENCE[ion]) / MOLAR_MASS[ion];
  let alkalinityMeq = meqOf("bicarbonate");
  let calciumMeq = meqOf("calcium");
  let magnesiumMeq = meqOf("magnesium");
  const withoutCarbon = 1000 * litres * (KW / protons - protons);
  // An analysis whose hydroxide alone is more than its alkalinity has no carbon to offer.
  let carbonMmol = Math.max(0, alkalinityMeq - withoutCarbon) / equivalentsPerCarbon(protons);
  for (const salt of SALTS) {
    const weighed = salts[salt];
    if (weighed === undefined) continue;
    const { molarMass, gives } = SALT_CHEMISTRY[salt];
    const mmol = (1000 * requireInRange(salt, weighed, gramsOf.range)) / molarMass;
    alkalinityMeq += mmol * (gives.bicarbonate ?? 0);
    calciumMeq += 2 * mmol * (gives.calcium ?? 0);
    magnesiumMeq += 2 * mmol * (gives.magnesium ?? 0);
    carbonMmol += mmol * (CARBON[salt] ?? 0);
  }
  return { litres, alkalinityMeq, carbonMmol: carbonDioxide === "kept" ? carbonMmol : 0, calciumMeq, magnesiumMeq };
}
