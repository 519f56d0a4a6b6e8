import type { Recipe } from "@/lib/calc/ledger";

/** How much of which ingredient a row of a recipe asks for. */
export interface RowNeed {
  /** "hops.2" */
  readonly path: string;
  readonly kind: "fermentable" | "hop";
  readonly name: string;
  readonly amount: number;
  readonly unit: "kg" | "g";
}

/** Every row that a lot can be taken for, in the order of the recipe; amounts to a thousandth, as lots are kept. */
export function rowNeeds({ fermentables, hops }: Pick<Recipe, "fermentables" | "hops">): readonly RowNeed[] {
  return [
    ...fermentables.map(({ name, kg }, i): RowNeed => {
      return { path: `fermentables.${String(i)}`, kind: "fermentable", name, amount: toThousandth(kg), unit: "kg" };
    }),
    ...hops.map(({ name, grams }, i): RowNeed => {
      return { path: `hops.${String(i)}`, kind: "hop", name, amount: toThousandth(grams), unit: "g" };
    }),
  ];
}

/** What a lot gives to a row. */
export interface RowTake extends RowNeed {
  readonly lotId: string;
  readonly taken: number;
  readonly short: number;
}

/** Takes from lots for the rows in their order; where a lot runs out, the later rows are short of it. */
export function takeFromLots(
  needs: readonly RowNeed[],
  lots: Readonly<Record<string, string>>,
  onHand: ReadonlyMap<string, number>,
): readonly RowTake[] {
  const left = new Map(onHand);
  return needs.flatMap((need) => {
    const lotId = lots[need.path];
    const there = lotId === undefined ? undefined : left.get(lotId);
    if (lotId === undefined || there === undefined) return [];
    const taken = Math.min(need.amount, there);
    left.set(lotId, toThousandth(there - taken));
    return [{ ...need, lotId, taken, short: toThousandth(need.amount - taken) }];
  });
}

/** Amounts of lots are kept to a thousandth of their unit. */
export function toThousandth(amount: number): number {
  return Math.round(amount * 1000) / 1000;
}
