import type { Fermentable, FermentableKind } from "@/lib/calc/ledger";
import { ebc, fraction, milliequivalentsPerKilogramPh, ph } from "@/lib/calc/units";

/** What a usual lot of a fermentable is like: a starting point that the maltster's analysis replaces. */
export type TypicalFermentable = Omit<Fermentable, "kg">;

/** Distilled-water pH and mEq/(kg·pH); acidulated malt is a pale malt that carries lactic acid, as a share of its mass. */
interface Acidity {
  readonly ph: number;
  readonly buffering: number;
  readonly lactic?: number;
}

type MaltRow = readonly [name: string, extract: number, moisture: number, colourEbc: number, acidity: Acidity];

type Row = readonly [name: string, extract: number, moisture: number, colourEbc: number, fermentability?: number];

// Names are generic. Extract of the dry substance and moisture are fractions. Status: malts, adjuncts and most sugars
// are from memory; malt extracts are trade practice, no source; sucrose and dextrose follow from their formulas.
const MALTS: readonly MaltRow[] = [
  ["Pilsner malt", 0.815, 0.045, 3, { ph: 5.75, buffering: 40 }],
  ["Lager malt two-row", 0.805, 0.043, 3.3, { ph: 5.75, buffering: 38 }],
  ["Pale two-row malt", 0.8, 0.04, 3.8, { ph: 5.68, buffering: 38 }],
  ["Pale six-row malt", 0.785, 0.042, 3.6, { ph: 5.75, buffering: 40 }],
  ["Pale ale malt", 0.81, 0.035, 6, { ph: 5.7, buffering: 38 }],
  ["Pale ale malt heritage winter barley", 0.815, 0.033, 6.5, { ph: 5.72, buffering: 38 }],
  ["Mild ale malt", 0.8, 0.035, 9.2, { ph: 5.6, buffering: 38 }],
  ["Vienna malt", 0.8, 0.042, 7.8, { ph: 5.58, buffering: 38 }],
  ["Munich malt light", 0.8, 0.042, 14.5, { ph: 5.5, buffering: 40 }],
  ["Munich malt dark", 0.795, 0.04, 22.5, { ph: 5.4, buffering: 42 }],
  ["Wheat malt pale", 0.84, 0.048, 3.8, { ph: 5.98, buffering: 38 }],
  ["Wheat malt dark", 0.83, 0.045, 17.2, { ph: 5.65, buffering: 40 }],
  ["Rye malt", 0.83, 0.048, 7, { ph: 5.9, buffering: 38 }],
  ["Spelt malt", 0.82, 0.048, 4.6, { ph: 5.9, buffering: 38 }],
  ["Oat malt", 0.7, 0.05, 4.4, { ph: 5.9, buffering: 45 }],
  ["Smoked malt beech", 0.8, 0.045, 5.2, { ph: 5.65, buffering: 38 }],
  ["Smoked malt peat", 0.8, 0.045, 5.2, { ph: 5.65, buffering: 38 }],
  ["Chit malt", 0.72, 0.06, 2.5, { ph: 5.8, buffering: 38 }],
  ["Dextrin malt", 0.75, 0.055, 2.5, { ph: 5.35, buffering: 40 }],
  ["Caramel malt very light 8L", 0.77, 0.05, 19.9, { ph: 5.1, buffering: 45 }],
  ["Caramel malt 10L", 0.77, 0.05, 25.2, { ph: 5.05, buffering: 45 }],
  ["Caramel malt 20L", 0.77, 0.048, 51.9, { ph: 4.95, buffering: 47 }],
  ["Caramel malt 30L", 0.765, 0.046, 78.6, { ph: 4.88, buffering: 48 }],
  ["Caramel malt 40L", 0.765, 0.045, 105.2, { ph: 4.8, buffering: 50 }],
  ["Caramel malt 60L", 0.76, 0.043, 158.6, { ph: 4.72, buffering: 52 }],
  ["Caramel malt 80L", 0.755, 0.042, 212, { ph: 4.65, buffering: 54 }],
  ["Caramel malt 120L", 0.75, 0.04, 318.7, { ph: 4.58, buffering: 57 }],
  ["Caramel malt 150L", 0.745, 0.04, 398.8, { ph: 4.52, buffering: 58 }],
  ["Wheat caramel malt 45L", 0.77, 0.048, 118.6, { ph: 4.85, buffering: 50 }],
  ["Melanoidin malt", 0.79, 0.04, 73.2, { ph: 4.95, buffering: 48 }],
  ["Aromatic malt", 0.79, 0.04, 51.9, { ph: 5.2, buffering: 44 }],
  ["Amber malt", 0.76, 0.028, 65.2, { ph: 5, buffering: 45 }],
  ["Biscuit malt", 0.77, 0.028, 59.9, { ph: 5.05, buffering: 45 }],
  ["Brown malt", 0.73, 0.03, 158.6, { ph: 4.75, buffering: 48 }],
  ["Pale chocolate malt", 0.72, 0.03, 532.2, { ph: 4.65, buffering: 45 }],
  ["Chocolate malt", 0.72, 0.03, 932.5, { ph: 4.6, buffering: 45 }],
  ["Black malt", 0.7, 0.03, 1332.8, { ph: 4.55, buffering: 45 }],
  ["Dehusked black malt", 0.72, 0.03, 1199.4, { ph: 4.65, buffering: 42 }],
  ["Chocolate wheat malt", 0.74, 0.035, 1065.9, { ph: 4.7, buffering: 43 }],
  ["Chocolate rye malt", 0.72, 0.035, 665.6, { ph: 4.65, buffering: 43 }],
  ["Roasted barley", 0.7, 0.035, 1332.8, { ph: 4.65, buffering: 38 }],
  ["Roasted barley light", 0.7, 0.035, 799.1, { ph: 4.68, buffering: 38 }],
  ["Acidulated malt", 0.78, 0.05, 4.4, { ph: 5.7, buffering: 38, lactic: 0.02 }],
];

const ADJUNCTS: readonly MaltRow[] = [
  ["Flaked barley", 0.72, 0.09, 3, { ph: 5.8, buffering: 30 }],
  ["Flaked wheat", 0.78, 0.09, 2.8, { ph: 6, buffering: 30 }],
  ["Flaked oats", 0.72, 0.08, 2.5, { ph: 6.1, buffering: 30 }],
  ["Flaked maize", 0.86, 0.1, 0.6, { ph: 6, buffering: 15 }],
  ["Flaked rice", 0.86, 0.1, 0.6, { ph: 6.1, buffering: 12 }],
  ["Flaked rye", 0.79, 0.09, 5.2, { ph: 6, buffering: 30 }],
  ["Torrified wheat", 0.78, 0.08, 2.8, { ph: 6, buffering: 30 }],
  ["Raw wheat", 0.8, 0.12, 2.8, { ph: 6.1, buffering: 28 }],
  ["Raw barley", 0.74, 0.12, 3, { ph: 5.9, buffering: 28 }],
  ["Corn grits", 0.88, 0.12, 0, { ph: 6, buffering: 12 }],
  ["Rice grits", 0.9, 0.12, 0, { ph: 6.1, buffering: 10 }],
  ["Buckwheat raw", 0.74, 0.12, 3.8, { ph: 6.2, buffering: 30 }],
  ["Millet malt", 0.75, 0.08, 3.8, { ph: 5.9, buffering: 30 }],
  ["Sorghum malt", 0.76, 0.09, 5.2, { ph: 5.9, buffering: 30 }],
];

const SUGARS: readonly Row[] = [
  ["Sucrose", 1, 0.0005, 0, 1],
  ["Dextrose monohydrate", 1, 0.091, 0, 1],
  ["Glucose anhydrous", 1, 0.002, 0, 1],
  ["Fructose", 1, 0.002, 0, 1],
  ["Brown sugar light", 0.98, 0.02, 19.9, 0.97],
  ["Brown sugar dark", 0.97, 0.03, 65.2, 0.96],
  ["Raw cane sugar (demerara/turbinado)", 0.99, 0.008, 9.2, 0.99],
  ["Muscovado/panela", 0.94, 0.04, 105.2, 0.93],
  ["Invert sugar syrup", 1, 0.22, 1.2, 0.98],
  ["Invert brewing syrup dark", 0.98, 0.2, 172, 0.94],
  ["Candi sugar clear", 1, 0.005, 0, 0.99],
  ["Candi syrup dark", 0.96, 0.28, 238.7, 0.8],
  ["Golden syrup", 0.97, 0.18, 19.9, 0.95],
  ["Honey", 1, 0.175, 3.8, 0.95],
  ["Maple syrup", 1, 0.33, 91.9, 0.98],
  ["Molasses", 0.85, 0.22, 212, 0.7],
  ["Treacle", 0.9, 0.2, 265.4, 0.75],
  ["Agave syrup", 1, 0.23, 3.8, 0.96],
  ["Lactose", 1, 0.05, 0, 0],
  ["Maltodextrin", 1, 0.05, 0, 0.05],
  ["Rice syrup", 1, 0.2, 1.2, 0.8],
  ["Corn syrup high maltose", 1, 0.19, 0, 0.8],
];

const MALT_EXTRACTS: readonly Row[] = [
  ["Liquid malt extract pale/pilsner", 1, 0.2, 5.2],
  ["Dry malt extract pale/pilsner", 1, 0.035, 5.2],
  ["Liquid malt extract light", 1, 0.2, 9.2],
  ["Dry malt extract light", 1, 0.035, 9.2],
  ["Liquid malt extract wheat", 1, 0.2, 6.5],
  ["Dry malt extract wheat", 1, 0.035, 6.5],
  ["Liquid malt extract amber", 1, 0.2, 25.2],
  ["Dry malt extract amber", 1, 0.035, 25.2],
  ["Liquid malt extract dark", 1, 0.2, 78.6],
  ["Dry malt extract dark", 1, 0.035, 78.6],
];

export const TYPICAL_FERMENTABLES: readonly TypicalFermentable[] = [
  ...MALTS.map((row) => mashed(row, "malt")),
  ...ADJUNCTS.map((row) => mashed(row, "adjunct")),
  ...SUGARS.map((row) => added(row, "sugar")),
  ...MALT_EXTRACTS.map((row) => added(row, "malt extract")),
];

function mashed([name, extract, moisture, colour, acidity]: MaltRow, kind: FermentableKind): TypicalFermentable {
  return {
    name,
    kind,
    extract: fraction(extract),
    moisture: fraction(moisture),
    colour: ebc(colour),
    station: "mash",
    // What the mash and the yeast decide is not a property of the malt.
    fermentability: null,
    acidity: {
      distilledWaterPh: ph(acidity.ph),
      buffering: milliequivalentsPerKilogramPh(acidity.buffering),
      lacticFraction: fraction(acidity.lactic ?? 0),
    },
  };
}

function added([name, extract, moisture, colour, share]: Row, kind: FermentableKind): TypicalFermentable {
  return {
    name,
    kind,
    extract: fraction(extract),
    moisture: fraction(moisture),
    colour: ebc(colour),
    station: "kettle",
    fermentability: share === undefined ? null : fraction(share),
    acidity: null,
  };
}
