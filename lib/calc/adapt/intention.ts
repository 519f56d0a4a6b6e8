import type { Fermentable, HopAddition, Ledger, Recipe } from "../ledger";
import type { Ebc, Fraction, GramsPerLitre, Ibu, Litres, MilligramsPerLitre, Ph } from "../units";
import type { AcidSolution, Ions } from "../water";

/** A fermentable without its mass: how much of the extract should come from it. */
export interface IntendedFermentable extends Omit<Fermentable, "kg"> {
  readonly share: Fraction;
}

/** A hop addition without its mass: what it should give. */
export interface IntendedHop extends Omit<HopAddition, "grams"> {
  /** Bitterness from this addition; null for dry hops. */
  readonly ibu: Ibu | null;
  /** Dose of a dry hop; null for hops of the hot side. */
  readonly gramsPerLitre: GramsPerLitre | null;
}

/** What a beer should be, whatever it is brewed on. */
export interface Intention extends Omit<Recipe, "fermentables" | "hops" | "water" | "intoFermenter" | "topUp"> {
  /** null leaves the volume to each kettle's usual batch. */
  readonly intoFermenter: Litres | null;
  readonly originalExtract: number;
  readonly colour: Ebc;
  readonly fermentables: readonly IntendedFermentable[];
  readonly hops: readonly IntendedHop[];
  readonly water: {
    readonly source: Ions;
    /** What the treated water should hold. */
    readonly ions: Ions;
    /** The salts as a dose, which gives these ions in the same water; null solves them for another one. */
    readonly saltsMgPerLitre: Readonly<Partial<Record<keyof Recipe["water"]["salts"], MilligramsPerLitre>>> | null;
    /** The acid, and the pH that it should bring the mash to; null without acid. */
    readonly acid: { readonly solution: AcidSolution; readonly mashPh: Ph } | null;
  };
}

export const WAY_OUT_KINDS = [
  "less volume",
  "more volume",
  "water after the boil",
  "malt extract for part of the grist",
  "sugar for part of the grist",
  "thicker mash",
  "thinner mash",
  "fewer rests",
  "gentler steps",
  "one rest instead",
  "two mashes",
  "longer boil",
  "split batch",
] as const;
export type WayOutKind = (typeof WAY_OUT_KINDS)[number];

/** One computed way to brew the beer on equipment that it does not fit as intended. */
export interface WayOut {
  readonly kind: WayOutKind;
  /** A second change that it needs; null for most. */
  readonly also: WayOutKind | null;
  /** The figure that defines it: litres, minutes, L/kg, °C of the warmest rest, a share, or a number of rests, mashes or batches. */
  readonly figure: number;
  /** How far it is from the intention: 0 is the intention itself; the ways out are ranked by it. */
  readonly distance: number;
  /** How often the recipe below is brewed (2 for a split batch). */
  readonly times: number;
  readonly recipe: Recipe;
  readonly ledger: Ledger;
}
