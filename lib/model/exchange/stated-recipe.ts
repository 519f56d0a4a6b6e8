import type { Fermentable, HopAddition, HopStand, MashAcid, MashStep, Packaging, Yeast } from "@/lib/calc/ledger";
import type { Celsius, Fraction, Litres, LitresPerKilogram, Minutes } from "@/lib/calc/units";
import type { Ions, SaltGrams } from "@/lib/calc/water";

/** A recipe as either standard can state it, in this book's units; null where the file says nothing. */
export interface StatedRecipe {
  readonly title: string;
  readonly notes: string;
  readonly style: string | null;
  readonly batch: Litres;
  readonly topUp: Litres;
  readonly preBoil: Litres | null;
  readonly boil: Minutes;
  /** Of the whole brewhouse, from the grist to the fermenter. */
  readonly efficiency: Fraction | null;
  readonly grain: Celsius | null;
  readonly thickness: LitresPerKilogram | null;
  readonly mash: readonly MashStep[];
  readonly stand: HopStand | null;
  readonly fermentables: readonly Fermentable[];
  readonly hops: readonly HopAddition[];
  readonly water: Ions | null;
  readonly salts: SaltGrams;
  readonly acid: MashAcid | null;
  readonly yeast: StatedYeast;
  readonly packaging: Partial<Packaging>;
  readonly figures: StatedFigures;
}

export type StatedYeast = Partial<Yeast> & {
  /** A single figure, where the file states no range. */
  readonly attenuation?: Fraction;
  /** Billions of cells for the whole batch. */
  readonly cells: number | null;
};

/** What the file itself says of the beer, in the units of the ledger; only compared, never taken. */
export interface StatedFigures {
  readonly originalExtract: number | null;
  readonly finalExtract: number | null;
  readonly bitterness: number | null;
  readonly colour: number | null;
  readonly alcohol: number | null;
}

export const NO_FIGURES: StatedFigures = {
  originalExtract: null,
  finalExtract: null,
  bitterness: null,
  colour: null,
  alcohol: null,
};
