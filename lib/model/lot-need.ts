import { packsToPitch } from "@/lib/calc/fermentation";
import type { Recipe } from "@/lib/calc/ledger";
import { billionCells } from "@/lib/calc/units";
import { LOT_UNIT } from "./ingredient-lot";
import type { IngredientKind } from "./ingredient-kinds";
import { nameKey } from "./lot";
import { SALT_FIELDS } from "./recipe-fields";

/** How much of which ingredient a row of a recipe asks for. */
export interface RowNeed {
  /** "hops.2", "salts.gypsum", "yeast" or "acid". */
  readonly path: string;
  readonly kind: IngredientKind;
  readonly name: string;
  readonly amount: number;
  readonly unit: (typeof LOT_UNIT)[IngredientKind];
}

/** What decides how many packs of yeast a wort takes, in 10⁹ cells; one pack where either is not known. */
export interface Pitching {
  readonly cells: number | null;
  readonly cellsInPack: number | null;
}

export const ONE_PACK: Pitching = { cells: null, cellsInPack: null };

type Rows = Pick<Recipe, "fermentables" | "hops" | "water" | "yeast">;

/** Every row that a lot can be taken for, in the order of the recipe; amounts to a thousandth, as lots are kept. */
export function rowNeeds({ fermentables, hops, water, yeast }: Rows, pitching: Pitching): readonly RowNeed[] {
  const { acid, salts } = water;
  return [
    ...fermentables.map(({ name, kg }, i) => need(`fermentables.${String(i)}`, "fermentable", name, kg)),
    ...hops.map(({ name, grams }, i) => need(`hops.${String(i)}`, "hop", name, grams)),
    need("yeast", "yeast", yeast.name, packsOf(pitching)),
    ...Object.entries(SALT_FIELDS)
      .map(([id, { label }]) => need(`salts.${id}`, "salt", label, salts[id as keyof typeof SALT_FIELDS] ?? 0))
      .filter(({ amount }) => amount > 0),
    ...(acid === null || acid.ml === 0 ? [] : [need("acid", "acid", `${acid.solution.acid} acid`, acid.ml)]),
  ];
}

function need(path: string, kind: IngredientKind, name: string, amount: number): RowNeed {
  return { path, kind, name, amount: toThousandth(amount), unit: LOT_UNIT[kind] };
}

function packsOf({ cells, cellsInPack }: Pitching): number {
  if (cells === null || cellsInPack === null || cellsInPack === 0) return 1;
  return packsToPitch({ cells: billionCells(cells), cellsInPack: billionCells(cellsInPack) });
}

/** Whether a lot of that name is of the ingredient of a row. A bottle of acid says its strength behind the name of the acid. */
export function isOfRow({ kind, name }: Pick<RowNeed, "kind" | "name">, lotName: string): boolean {
  const [asked, there] = [nameKey(name), nameKey(lotName)];
  return there === asked || (kind === "acid" && there.startsWith(`${asked} `));
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
  return needs.flatMap((row) => {
    const lotId = lots[row.path];
    const there = lotId === undefined ? undefined : left.get(lotId);
    if (lotId === undefined || there === undefined) return [];
    const taken = Math.min(row.amount, there);
    left.set(lotId, toThousandth(there - taken));
    return [{ ...row, lotId, taken, short: toThousandth(row.amount - taken) }];
  });
}

/** Amounts of lots are kept to a thousandth of their unit. */
export function toThousandth(amount: number): number {
  return Math.round(amount * 1000) / 1000;
}
