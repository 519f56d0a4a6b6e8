import type { Ambient, Equipment, Fermentable, HopAddition, Ledger, Limit, QuantityId, Recipe } from "../ledger";

/** A malt, adjunct, sugar or extract as it stands on a shelf. */
export type FermentableStock = Omit<Fermentable, "kg">;

/** A hop as it stands on a shelf. */
export type HopStock = Pick<HopAddition, "name" | "alpha">;

/** The row that cannot be had, and what could stand in for it. */
export type Lacking =
  | { readonly list: "fermentables"; readonly index: number; readonly candidates: readonly FermentableStock[] }
  | { readonly list: "hops"; readonly index: number; readonly candidates: readonly HopStock[] };

/** A recipe on a kettle, of which one row is lacking. */
export interface SubstituteInput {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly lacking: Lacking;
}

/** What makes a candidate unlike the row, each already weighed; they add up to the distance. */
export interface Unlikeness {
  readonly extract: number;
  readonly colour: number;
  /** Of the whole beer, where the rest of the grist cannot make up for the candidate. */
  readonly beerColour: number;
  readonly mashPh: number;
  readonly attenuation: number;
  readonly alpha: number;
}

/** A number of the ledger that is not what it was. */
export interface LedgerChange {
  readonly quantity: QuantityId;
  readonly before: number | null;
  readonly after: number | null;
}

/** One candidate in the place of the row, with every amount solved anew. */
export interface Substitute {
  readonly name: string;
  /** Its place in the list of candidates. */
  readonly candidate: number;
  /** 0 for the row itself; the substitutes are ranked by it. */
  readonly distance: number;
  readonly unlike: Unlikeness;
  readonly recipe: Recipe;
  readonly ledger: Ledger;
  readonly changes: readonly LedgerChange[];
}

export type UnfitReason =
  | "no-extract"
  | "no-alpha"
  | "colour-out-of-reach"
  | "strength-out-of-reach"
  | "bitterness-out-of-reach"
  | "breaks-a-limit";

/** A candidate that cannot stand in, and why. */
export interface Unfit {
  readonly name: string;
  readonly candidate: number;
  readonly reason: UnfitReason;
  /** Limits of the kettle that it breaks and the recipe keeps. */
  readonly limits: readonly Limit[];
}

export type SubstituteOutcome =
  | { readonly ok: true; readonly substitutes: readonly Substitute[]; readonly unfit: readonly Unfit[] }
  | {
      readonly ok: false;
      readonly reason: "recipe-gives-no-wort" | "row-gives-nothing" | "no-candidates" | "nothing-fits";
      readonly unfit: readonly Unfit[];
    };

/** The recipe as it would be brewed, which every candidate is held against. */
export interface Original {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly ledger: Ledger;
}
