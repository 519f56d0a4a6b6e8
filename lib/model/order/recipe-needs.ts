import { packsToPitch } from "@/lib/calc/fermentation";
import type { Recipe } from "@/lib/calc/ledger";
import { billionCells } from "@/lib/calc/units";
import { SALT_FIELDS } from "../recipe-fields";
import type { OrderThing } from "./order-words";

/** What a sheet needs of one thing, in its unit; not yet rounded. */
export interface Need {
  readonly thing: OrderThing;
  readonly amount: number;
}

/** What the ledger says beside the recipe's own amounts. */
export interface LedgerNeeds {
  /** Cells to pitch, in billions; null where nobody knows. */
  readonly cellsBillion: number | null;
  readonly primingG: number | null;
}

const PRIMING_NAMES = {
  sucrose: "Sucrose",
  dextroseMonohydrate: "Dextrose monohydrate",
  dextroseAnhydrous: "Dextrose anhydrous",
} as const;

const ACID_NAMES = {
  lactic: "Lactic acid",
  phosphoric: "Phosphoric acid",
  hydrochloric: "Hydrochloric acid",
  sulfuric: "Sulfuric acid",
  citric: "Citric acid",
} as const;

const GRAMS_PER_KILOGRAM = 1000;

/**
 * Everything that one sheet needs, in grams, millilitres and pieces. Yeast is counted in packs of so many cells as the order
 * says, one pack where it does not say.
 */
export function recipeNeeds(
  recipe: Recipe,
  ledger: LedgerNeeds,
  cellsPerPiece: (yeast: string) => number | null,
): readonly Need[] {
  const { fermentables, hops, water, yeast, packaging } = recipe;
  const grams = (kind: OrderThing["kind"], name: string, amount: number): Need => ({
    thing: { kind, name, unit: "g" },
    amount,
  });
  const salts = Object.entries(SALT_FIELDS).map(([salt, { label }]) =>
    grams("salt", label, water.salts[salt as keyof typeof SALT_FIELDS] ?? 0),
  );
  const priming =
    packaging.priming === null ? [] : [grams("fermentable", PRIMING_NAMES[packaging.priming], ledger.primingG ?? 0)];
  return [
    ...fermentables.map(({ name, kg }) => grams("fermentable", name, kg * GRAMS_PER_KILOGRAM)),
    ...priming,
    ...hops.map((hop) => grams("hop", hop.name, hop.grams)),
    yeastNeed(yeast.name, packs(ledger, cellsPerPiece(yeast.name))),
    ...salts,
    ...acidNeed(recipe),
  ].filter(({ amount }) => amount > 0);
}

function yeastNeed(name: string, amount: number): Need {
  return { thing: { kind: "yeast", name, unit: "pcs" }, amount };
}

function packs({ cellsBillion }: LedgerNeeds, cellsPerPiece: number | null): number {
  if (cellsBillion === null || cellsPerPiece === null) return 1;
  return packsToPitch({ cells: billionCells(cellsBillion), cellsInPack: billionCells(cellsPerPiece) });
}

function acidNeed({ water: { acid } }: Recipe): readonly Need[] {
  if (acid === null) return [];
  const { acid: of, massFraction } = acid.solution;
  const strength = String(Math.round(massFraction * 1000) / 10);
  return [{ thing: { kind: "acid", name: `${ACID_NAMES[of]} ${strength} %`, unit: "mL" }, amount: acid.ml }];
}
