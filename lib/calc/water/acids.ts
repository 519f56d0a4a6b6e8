import { requireInRange } from "../errors";
import { fraction, kilogramsPerLitre, type Fraction, type KilogramsPerLitre } from "../units";
import { MOLAR_MASS } from "./molar-mass";

export const ACIDS = ["lactic", "phosphoric", "hydrochloric", "sulfuric", "citric"] as const;

export type Acid = (typeof ACIDS)[number];

/** An acid as it stands in its bottle. */
export interface AcidSolution {
  readonly acid: Acid;
  /** Acid by mass of the solution. */
  readonly massFraction: Fraction;
  readonly density: KilogramsPerLitre;
}

export const ACID_STRENGTH_RANGE = { unit: "", min: 0.001, max: 1 } as const;
export const ACID_DENSITY_RANGE = { unit: "kg/L", min: 0.9, max: 2 } as const;

interface AcidChemistry {
  readonly molarMass: number;
  /** Protons that are always given off. */
  readonly strongProtons: number;
  /** Dissociation constants of the others, mol/L at 25 °C. */
  readonly constants: readonly number[];
}

const constantsOf = (...pka: readonly number[]): readonly number[] => pka.map((p) => 10 ** -p);

// Constants at 25 °C of docs/sources.md#crc-handbook.
export const ACID_CHEMISTRY: Readonly<Record<Acid, AcidChemistry>> = {
  lactic: { molarMass: MOLAR_MASS.lacticAcid, strongProtons: 0, constants: constantsOf(3.86) },
  phosphoric: { molarMass: MOLAR_MASS.phosphoricAcid, strongProtons: 0, constants: constantsOf(2.148, 7.198, 12.35) },
  hydrochloric: { molarMass: MOLAR_MASS.hydrochloricAcid, strongProtons: 1, constants: [] },
  sulfuric: { molarMass: MOLAR_MASS.sulfuricAcid, strongProtons: 1, constants: constantsOf(1.99) },
  citric: { molarMass: MOLAR_MASS.citricAcid, strongProtons: 0, constants: constantsOf(3.13, 4.76, 6.4) },
};

const solution = (acid: Acid, massFraction: number, density: number): AcidSolution => ({
  acid,
  massFraction: fraction(massFraction),
  density: kilogramsPerLitre(density),
});

/** Strengths that are sold, with their density at 20 °C; that of lactic acid is common practice, no source. */
export const ACID_SOLUTIONS = {
  lactic80: solution("lactic", 0.8, 1.19),
  lactic88: solution("lactic", 0.88, 1.209),
  phosphoric10: solution("phosphoric", 0.1, 1.0531),
  phosphoric75: solution("phosphoric", 0.75, 1.579),
  phosphoric85: solution("phosphoric", 0.85, 1.685),
  hydrochloric10: solution("hydrochloric", 0.1, 1.048),
  hydrochloric32: solution("hydrochloric", 0.32, 1.159),
  sulfuric10: solution("sulfuric", 0.1, 1.0661),
  sulfuric50: solution("sulfuric", 0.5, 1.3952),
} as const satisfies Readonly<Record<string, AcidSolution>>;

/**
 * Gives the acid in a millilitre of its solution.
 *
 * @returns Amount of acid, mmol/mL, which is mol/L.
 * @throws {@link OutOfRangeError} when the strength is outside 0.1 to 100 % or the density outside 0.9 to 2 kg/L.
 * @example
 * millimolesPerMillilitre(ACID_SOLUTIONS.lactic88); // 11.81
 */
export function millimolesPerMillilitre({ acid, massFraction, density }: AcidSolution): number {
  requireInRange("strength of the acid", massFraction, ACID_STRENGTH_RANGE);
  requireInRange("density of the acid", density, ACID_DENSITY_RANGE);
  return (1000 * density * massFraction) / ACID_CHEMISTRY[acid].molarMass;
}

/**
 * Gives how many protons a molecule of an acid has given off on the average.
 *
 * @param acid - Which acid.
 * @param protons - Hydrogen ions around it, mol/L.
 * @returns Mean charge, without its sign.
 * @example
 * meanCharge("lactic", 10 ** -5.4); // 0.972
 */
export function meanCharge(acid: Acid, protons: number): number {
  const { strongProtons, constants } = ACID_CHEMISTRY[acid];
  let share = 1;
  let all = 1;
  let charge = 0;
  let given = 0;
  for (const constant of constants) {
    given++;
    share *= constant / protons;
    all += share;
    charge += given * share;
  }
  return strongProtons + charge / all;
}

/**
 * Gives the hydrogen ions at a pH.
 *
 * @param ph - pH, as activity.
 * @returns Hydrogen ions, mol/L.
 * @example
 * protonsAt(7); // 1e-7
 */
export function protonsAt(ph: number): number {
  return 10 ** -ph;
}
