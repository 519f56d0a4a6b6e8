import type { Fermentable, FermentableKind } from "@/lib/calc/ledger";
import { ebc, fraction } from "@/lib/calc/units";

/** What a usual lot of a fermentable is like: a starting point that the maltster's analysis replaces. */
export type TypicalFermentable = Omit<Fermentable, "kg">;

type Row = readonly [name: string, extract: number, moisture: number, colourEbc: number, fermentability?: number];

// Names are generic. Extract of the dry substance and moisture are fractions. Status: malts, adjuncts and most sugars
// are from memory; malt extracts are trade practice, no source; sucrose and dextrose follow from their formulas.
const MALTS: readonly Row[] = [
  ["Pilsner malt", 0.815, 0.045, 3],
  ["Lager malt two-row", 0.805, 0.043, 3.3],
  ["Pale two-row malt", 0.8, 0.04, 3.8],
  ["Pale six-row malt", 0.785, 0.042, 3.6],
  ["Pale ale malt", 0.81, 0.035, 6],
  ["Pale ale malt heritage winter barley", 0.815, 0.033, 6.5],
  ["Mild ale malt", 0.8, 0.035, 9.2],
  ["Vienna malt", 0.8, 0.042, 7.8],
  ["Munich malt light", 0.8, 0.042, 14.5],
  ["Munich malt dark", 0.795, 0.04, 22.5],
  ["Wheat malt pale", 0.84, 0.048, 3.8],
  ["Wheat malt dark", 0.83, 0.045, 17.2],
  ["Rye malt", 0.83, 0.048, 7],
  ["Spelt malt", 0.82, 0.048, 4.6],
  ["Oat malt", 0.7, 0.05, 4.4],
  ["Smoked malt beech", 0.8, 0.045, 5.2],
  ["Smoked malt peat", 0.8, 0.045, 5.2],
  ["Chit malt", 0.72, 0.06, 2.5],
  ["Dextrin malt", 0.75, 0.055, 2.5],
  ["Caramel malt very light 8L", 0.77, 0.05, 19.9],
  ["Caramel malt 10L", 0.77, 0.05, 25.2],
  ["Caramel malt 20L", 0.77, 0.048, 51.9],
  ["Caramel malt 30L", 0.765, 0.046, 78.6],
  ["Caramel malt 40L", 0.765, 0.045, 105.2],
  ["Caramel malt 60L", 0.76, 0.043, 158.6],
  ["Caramel malt 80L", 0.755, 0.042, 212],
  ["Caramel malt 120L", 0.75, 0.04, 318.7],
  ["Caramel malt 150L", 0.745, 0.04, 398.8],
  ["Wheat caramel malt 45L", 0.77, 0.048, 118.6],
  ["Melanoidin malt", 0.79, 0.04, 73.2],
  ["Aromatic malt", 0.79, 0.04, 51.9],
  ["Amber malt", 0.76, 0.028, 65.2],
  ["Biscuit malt", 0.77, 0.028, 59.9],
  ["Brown malt", 0.73, 0.03, 158.6],
  ["Pale chocolate malt", 0.72, 0.03, 532.2],
  ["Chocolate malt", 0.72, 0.03, 932.5],
  ["Black malt", 0.7, 0.03, 1332.8],
  ["Dehusked black malt", 0.72, 0.03, 1199.4],
  ["Chocolate wheat malt", 0.74, 0.035, 1065.9],
  ["Chocolate rye malt", 0.72, 0.035, 665.6],
  ["Roasted barley", 0.7, 0.035, 1332.8],
  ["Roasted barley light", 0.7, 0.035, 799.1],
  ["Acidulated malt", 0.78, 0.05, 4.4],
];

const ADJUNCTS: readonly Row[] = [
  ["Flaked barley", 0.72, 0.09, 3],
  ["Flaked wheat", 0.78, 0.09, 2.8],
  ["Flaked oats", 0.72, 0.08, 2.5],
  ["Flaked maize", 0.86, 0.1, 0.6],
  ["Flaked rice", 0.86, 0.1, 0.6],
  ["Flaked rye", 0.79, 0.09, 5.2],
  ["Torrified wheat", 0.78, 0.08, 2.8],
  ["Raw wheat", 0.8, 0.12, 2.8],
  ["Raw barley", 0.74, 0.12, 3],
  ["Corn grits", 0.88, 0.12, 0],
  ["Rice grits", 0.9, 0.12, 0],
  ["Buckwheat raw", 0.74, 0.12, 3.8],
  ["Millet malt", 0.75, 0.08, 3.8],
  ["Sorghum malt", 0.76, 0.09, 5.2],
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
  ...MALTS.map((row) => typical(row, "malt")),
  ...ADJUNCTS.map((row) => typical(row, "adjunct")),
  ...SUGARS.map((row) => typical(row, "sugar")),
  ...MALT_EXTRACTS.map((row) => typical(row, "malt extract")),
];

function typical([name, extract, moisture, colour, share]: Row, kind: FermentableKind): TypicalFermentable {
  return {
    name,
    kind,
    extract: fraction(extract),
    moisture: fraction(moisture),
    colour: ebc(colour),
    station: kind === "malt" || kind === "adjunct" ? "mash" : "kettle",
    // What the mash and the yeast decide is not a property of the malt.
    fermentability: share === undefined ? null : fraction(share),
  };
}
