import { requireInRange } from "../errors";
import { findRoot } from "../numerics";
import { millilitres } from "../units";
import { meanCharge, millimolesPerMillilitre, protonsAt, type Acid } from "./acids";
import type { AcidAddition } from "./ions-from-acids";
import { alkalinityAt, liquorCharge, type Liquor, type LiquorCharge } from "./liquor";
import { baseTaken, bufferOf, type Buffer, type MashedMalt } from "./mashed-malt";
import { MOLAR_MASS } from "./molar-mass";

/**
 * Protons that calcium and magnesium set free as they react with malt phosphates, for each of their equivalents.
 */
export interface HardnessReaction {
  readonly calcium: number;
  readonly magnesium: number;
}

export const HARDNESS_REACTION_RANGE = { unit: "", min: 0, max: 1 } as const;

/** Found in knocked-out wort, not in the mash (docs/sources.md#kolbach-1953). */
export const KOLBACH_REACTION: HardnessReaction = { calcium: 1 / 3.5, magnesium: 1 / 7 };

interface DissolvedAcid {
  readonly acid: Acid;
  readonly mmol: number;
}

/** All that gives or takes protons, checked and ready to be weighed at any pH. */
export interface ProtonBalance {
  readonly liquor: LiquorCharge;
  readonly malts: readonly Buffer[];
  /** Lactic acid of acidulated malt, in the order of the malts. */
  readonly maltLacticMmol: readonly number[];
  readonly acids: readonly DissolvedAcid[];
  readonly calciumMeq: number;
  readonly magnesiumMeq: number;
}

/**
 * Gathers water, malts and acids for a balance of protons.
 *
 * @returns The balance.
 * @throws {@link OutOfRangeError} when a figure is outside its range.
 * @example
 * protonBalance({ water, grist: [], hardnessReaction: { calcium: 0, magnesium: 0 }, acids: [] });
 */
export function protonBalance({
  water,
  grist,
  hardnessReaction,
  acids,
}: {
  readonly water: Liquor;
  readonly grist: readonly MashedMalt[];
  readonly hardnessReaction: HardnessReaction;
  readonly acids: readonly AcidAddition[];
}): ProtonBalance {
  const liquor = liquorCharge(water);
  const released = requireInRange("protons for calcium", hardnessReaction.calcium, HARDNESS_REACTION_RANGE);
  const releasedByMagnesium = requireInRange(
    "protons for magnesium",
    hardnessReaction.magnesium,
    HARDNESS_REACTION_RANGE,
  );
  return {
    liquor,
    malts: grist.map(bufferOf),
    maltLacticMmol: grist.map((malt) => (1e6 * malt.kg * malt.lacticFraction) / MOLAR_MASS.lacticAcid),
    acids: acids.map(({ acid, ml }) => ({
      acid: acid.acid,
      mmol: requireInRange("volume of acid", ml, millilitres.range) * millimolesPerMillilitre(acid),
    })),
    calciumMeq: released * liquor.calciumMeq,
    magnesiumMeq: releasedByMagnesium * liquor.magnesiumMeq,
  };
}

/**
 * Gives the acid that a malt has to give off to end at a pH, its lactic acid included.
 *
 * @param balance - The mash.
 * @param row - Place of the malt in the grist.
 * @param ph - pH of the mash.
 * @param protons - The same, mol/L.
 * @returns Acid, mEq; below zero where the malt takes acid up.
 * @example
 * maltAcid(balance, 0, 5.4, 10 ** -5.4); // −66.5 for 5 kg of pale malt
 */
export function maltAcid(balance: ProtonBalance, row: number, ph: number, protons: number): number {
  const buffer = balance.malts[row];
  const lactic = balance.maltLacticMmol[row];
  if (buffer === undefined || lactic === undefined) return 0;
  // Saves the mean charge of an acid that is not there.
  return baseTaken(buffer, ph) + (lactic === 0 ? 0 : lactic * meanCharge("lactic", protons));
}

/**
 * Weighs acid against base at a pH.
 *
 * @param balance - The mash or the water.
 * @param ph - pH to try.
 * @returns Acid left over, mEq: it rises with pH, and is zero where the mash settles.
 * @example
 * acidSurplus(balance, 5.4); // below zero: more acid is needed to reach 5.4
 */
export function acidSurplus(balance: ProtonBalance, ph: number): number {
  const protons = protonsAt(ph);
  let acid = balance.calciumMeq + balance.magnesiumMeq;
  acid += alkalinityAt(balance.liquor, protons) - balance.liquor.alkalinityMeq;
  for (let row = 0; row < balance.malts.length; row++) acid += maltAcid(balance, row, ph, protons);
  for (const added of balance.acids) acid += added.mmol * meanCharge(added.acid, protons);
  return acid;
}

export type SettledPh =
  | { readonly ok: true; readonly ph: number }
  | { readonly ok: false; readonly reason: "too-acid" | "too-alkaline"; readonly ph: number };

/** Answers agree with the balance to a millionth of what any meter reads. */
const PH_TOLERANCE = 1e-10;

/**
 * Finds the pH at which acid and base cancel.
 *
 * @returns The pH; or the end of the span that it lies beyond.
 * @example
 * settle(balance, { min: 3, max: 10 }); // { ok: true, ph: 5.6 }
 */
export function settle(balance: ProtonBalance, span: { readonly min: number; readonly max: number }): SettledPh {
  const root = findRoot({
    f: (ph) => acidSurplus(balance, ph),
    low: span.min,
    high: span.max,
    tolerance: PH_TOLERANCE,
  });
  if (root.ok) return { ok: true, ph: root.x };
  // The surplus only rises, so an unbracketed root lies beyond the end that is nearer to balance.
  return { ok: false, reason: root.x === span.min ? "too-acid" : "too-alkaline", ph: root.x };
}
