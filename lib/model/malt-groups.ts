/** What a malt is mashed for. */
export type MaltGroup = "base" | "special" | "caramel" | "kilned special" | "roasted" | "acid" | "adjunct";

export interface MaltFacts {
  readonly group: MaltGroup;
  /** Diastatic power, degrees Lintner. */
  readonly lintner: number;
}

type Row = readonly [name: string, group: MaltGroup, lintner: number];

// Diastatic power is from memory; it tells which malts convert themselves, and no calculation uses it.
const ROWS: readonly Row[] = [
  ["Pilsner malt", "base", 110],
  ["Lager malt two-row", "base", 120],
  ["Pale two-row malt", "base", 130],
  ["Pale six-row malt", "base", 160],
  ["Pale ale malt", "base", 60],
  ["Pale ale malt heritage winter barley", "base", 60],
  ["Mild ale malt", "base", 55],
  ["Vienna malt", "base", 60],
  ["Munich malt light", "base", 50],
  ["Munich malt dark", "base", 30],
  ["Wheat malt pale", "base", 140],
  ["Wheat malt dark", "base", 60],
  ["Rye malt", "base", 100],
  ["Spelt malt", "base", 90],
  ["Oat malt", "base", 20],
  ["Smoked malt beech", "base", 80],
  ["Smoked malt peat", "base", 60],
  ["Chit malt", "special", 40],
  ["Dextrin malt", "caramel", 0],
  ["Caramel malt very light 8L", "caramel", 0],
  ["Caramel malt 10L", "caramel", 0],
  ["Caramel malt 20L", "caramel", 0],
  ["Caramel malt 30L", "caramel", 0],
  ["Caramel malt 40L", "caramel", 0],
  ["Caramel malt 60L", "caramel", 0],
  ["Caramel malt 80L", "caramel", 0],
  ["Caramel malt 120L", "caramel", 0],
  ["Caramel malt 150L", "caramel", 0],
  ["Wheat caramel malt 45L", "caramel", 0],
  ["Melanoidin malt", "kilned special", 10],
  ["Aromatic malt", "kilned special", 25],
  ["Amber malt", "kilned special", 0],
  ["Biscuit malt", "kilned special", 0],
  ["Brown malt", "kilned special", 0],
  ["Pale chocolate malt", "roasted", 0],
  ["Chocolate malt", "roasted", 0],
  ["Black malt", "roasted", 0],
  ["Dehusked black malt", "roasted", 0],
  ["Chocolate wheat malt", "roasted", 0],
  ["Chocolate rye malt", "roasted", 0],
  ["Roasted barley", "roasted", 0],
  ["Roasted barley light", "roasted", 0],
  ["Acidulated malt", "acid", 0],
  ["Flaked barley", "adjunct", 0],
  ["Flaked wheat", "adjunct", 0],
  ["Flaked oats", "adjunct", 0],
  ["Flaked maize", "adjunct", 0],
  ["Flaked rice", "adjunct", 0],
  ["Flaked rye", "adjunct", 0],
  ["Torrified wheat", "adjunct", 0],
  ["Raw wheat", "adjunct", 0],
  ["Raw barley", "adjunct", 0],
  ["Corn grits", "adjunct", 0],
  ["Rice grits", "adjunct", 0],
  ["Buckwheat raw", "adjunct", 0],
  ["Millet malt", "adjunct", 20],
  ["Sorghum malt", "adjunct", 20],
];

const FACTS: ReadonlyMap<string, MaltFacts> = new Map(ROWS.map(([name, group, lintner]) => [name, { group, lintner }]));

/** What a generic malt or adjunct is mashed for; null for what is not in the list. */
export function maltFacts(name: string): MaltFacts | null {
  return FACTS.get(name) ?? null;
}
