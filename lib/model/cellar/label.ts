import type { Fermentable } from "@/lib/calc/ledger";

/** A size of label, and how it is printed. */
export interface LabelSize {
  readonly id: "roll" | "a4-24" | "a4-8";
  readonly text: string;
}

export const LABEL_SIZES: readonly LabelSize[] = [
  { id: "roll", text: "roll, 62 × 29 mm, one after the other" },
  { id: "a4-24", text: "A4, 24 of 70 × 37 mm" },
  { id: "a4-8", text: "A4, 8 of 105 × 74 mm" },
];

/** More are printed in two goes. */
export const MOST_LABELS = 240;

const CEREALS = ["wheat", "rye", "oat", "spelt"] as const;
const GRAINS: ReadonlySet<Fermentable["kind"]> = new Set<Fermentable["kind"]>(["malt", "adjunct", "malt extract"]);
const WITHOUT_GLUTEN = /rice|maize|corn|sorghum|millet|buckwheat/i;

/**
 * What the label says of allergens, as far as the recipe tells: the cereals with gluten by the names of the malts, barley
 * where a malt names no other, and milk where there is lactose. A proposal, which the brewer reads and puts right.
 */
export function allergenProposal(fermentables: readonly Pick<Fermentable, "name" | "kind">[]): string {
  const cereals = new Set<string>();
  for (const { name, kind } of fermentables) {
    if (!GRAINS.has(kind) || WITHOUT_GLUTEN.test(name)) continue;
    const named = CEREALS.filter((cereal) => name.toLowerCase().includes(cereal));
    if (named.length === 0) cereals.add("barley");
    for (const cereal of named) cereals.add(cereal);
  }
  const contains = [
    ...(cereals.size === 0 ? [] : [`${[...cereals].sort().join(", ")} (gluten)`]),
    ...(fermentables.some(({ name }) => /lactose|milk/i.test(name)) ? ["milk"] : []),
  ];
  return contains.length === 0 ? "" : `Contains ${contains.join(", ")}.`;
}
