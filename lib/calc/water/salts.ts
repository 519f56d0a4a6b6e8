import type { Grams } from "../units";
import type { Ion } from "./ions";
import { MOLAR_MASS } from "./molar-mass";

export const SALTS = [
  "gypsum",
  "calciumChlorideDihydrate",
  "epsomSalt",
  "tableSalt",
  "bakingSoda",
  "chalk",
  "slakedLime",
] as const;

export type Salt = (typeof SALTS)[number];

export type SaltGrams = Readonly<Partial<Record<Salt, Grams>>>;

interface SaltChemistry {
  /** g/mol of the salt as weighed, with its crystal water. */
  readonly molarMass: number;
  /** Moles of each ion from one mole of salt. */
  readonly gives: Readonly<Partial<Record<Ion, number>>>;
}

/**
 * What each salt dissolves to. Chalk and slaked lime are counted as fully dissolved with carbon dioxide, which turns
 * each of their two equivalents of base into bicarbonate: CaCO3 + CO2 + H2O and Ca(OH)2 + 2 CO2 both give Ca + 2 HCO3.
 */
export const SALT_CHEMISTRY: Readonly<Record<Salt, SaltChemistry>> = {
  gypsum: { molarMass: MOLAR_MASS.gypsum, gives: { calcium: 1, sulfate: 1 } },
  calciumChlorideDihydrate: { molarMass: MOLAR_MASS.calciumChlorideDihydrate, gives: { calcium: 1, chloride: 2 } },
  epsomSalt: { molarMass: MOLAR_MASS.epsomSalt, gives: { magnesium: 1, sulfate: 1 } },
  tableSalt: { molarMass: MOLAR_MASS.tableSalt, gives: { sodium: 1, chloride: 1 } },
  bakingSoda: { molarMass: MOLAR_MASS.bakingSoda, gives: { sodium: 1, bicarbonate: 1 } },
  chalk: { molarMass: MOLAR_MASS.chalk, gives: { calcium: 1, bicarbonate: 2 } },
  slakedLime: { molarMass: MOLAR_MASS.slakedLime, gives: { calcium: 1, bicarbonate: 2 } },
};
