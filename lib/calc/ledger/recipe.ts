import type {
  Celsius,
  Ebc,
  Fraction,
  Grams,
  Kilograms,
  Litres,
  LitresPerKilogram,
  Millilitres,
  MillionPerMlPlato,
  Minutes,
  VolumesCo2,
} from "../units";
import type { AcidSolution, Ions, MashedMalt, SaltGrams } from "../water";

/** How a malt moves the pH of the mash. */
export type MaltAcidity = Pick<MashedMalt, "distilledWaterPh" | "buffering" | "lacticFraction">;

export type FermentableKind = "malt" | "adjunct" | "sugar" | "malt extract";

/** One row of the grist, or a sugar or extract that goes into the kettle. */
export interface Fermentable {
  readonly name: string;
  readonly kind: FermentableKind;
  readonly kg: Kilograms;
  /** Extract of the dry substance, fine grind, as a fraction of dry mass. */
  readonly extract: Fraction;
  readonly moisture: Fraction;
  readonly colour: Ebc;
  readonly station: "mash" | "kettle";
  /** Share of this extract that yeast takes, by mass; null for what the mash and the yeast decide. */
  readonly fermentability: Fraction | null;
  /** As the maltster or a list of ingredients gives it; null guesses it from kind and colour. */
  readonly acidity: MaltAcidity | null;
}

export type HopUse = "boil" | "stand" | "dry";

export interface HopAddition {
  readonly name: string;
  readonly grams: Grams;
  readonly alpha: Fraction;
  readonly use: HopUse;
  /** `boil`: minutes before the end of the boil; `stand`: minutes before the stand ends; `dry`: not used. */
  readonly minutes: Minutes;
}

export interface MashStep {
  readonly celsius: Celsius;
  readonly minutes: Minutes;
}

/** A rest of the hopped wort below boiling before it is chilled. */
export interface HopStand {
  readonly celsius: Celsius;
  readonly minutes: Minutes;
}

export interface Yeast {
  readonly name: string;
  /** Apparent attenuation range of the yeast class. */
  readonly attenuationLow: Fraction;
  readonly attenuationHigh: Fraction;
  readonly pitch: MillionPerMlPlato;
  readonly celsius: Celsius;
}

export type PrimingSugar = "sucrose" | "dextroseMonohydrate" | "dextroseAnhydrous";

export interface Packaging {
  readonly container: "bottle" | "keg";
  readonly carbonation: VolumesCo2;
  /** null when the beer is carbonated from a cylinder. */
  readonly priming: PrimingSugar | null;
  /** Warmest temperature of the beer since fermentation ended. */
  readonly warmest: Celsius;
  /** Highest carbonation that the maker of the container states. */
  readonly rated: VolumesCo2;
}

export interface WaterTreatment {
  readonly source: Ions;
  /** Grams of each salt in all the hot water together. */
  readonly salts: SaltGrams;
  /** Acid in the mash water; null without any. */
  readonly acid: MashAcid | null;
}

/** Acid that goes into the mash water. */
export interface MashAcid {
  readonly solution: AcidSolution;
  readonly ml: Millilitres;
}

/**
 * A recipe with amounts for one kettle. Water is not an amount here: it follows from the volume wanted and the
 * equipment, so `brew` finds it.
 */
export interface Recipe {
  /** Wort into the fermenter, at 20 °C. */
  readonly intoFermenter: Litres;
  /** Water added after the boil, at 20 °C; counted inside `intoFermenter`. */
  readonly topUp: Litres;
  /** Litres of mash water for each kilogram of grist; null mashes with all the water. */
  readonly thickness: LitresPerKilogram | null;
  readonly mash: readonly MashStep[];
  /** The grist is mashed in this many equal parts, one after the other, into one boil: 1 or 2. */
  readonly mashes: number;
  readonly boil: Minutes;
  readonly stand: HopStand | null;
  readonly fermentables: readonly Fermentable[];
  readonly hops: readonly HopAddition[];
  readonly water: WaterTreatment;
  readonly yeast: Yeast;
  readonly packaging: Packaging;
}
