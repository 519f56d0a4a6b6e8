import type { Dimension, HopUse, Ledger, Recipe } from "@/lib/calc/ledger";
import type { AcidSolution } from "@/lib/calc/water";
import { SALT_FIELDS } from "@/lib/model/recipe-fields";
import { ACID_LABELS, acidName } from "../recipe/acid-names";

/** One thing to weigh or pour, as a printed sheet lists it. */
export interface SheetRow {
  readonly key: string;
  readonly name: string;
  /** Where and when it goes in. */
  readonly when: string;
  readonly value: number;
  /** null for millilitres, which no dimension of the library has. */
  readonly dimension: Dimension | null;
  /** What it gives: its share of the extract, or its bitterness. */
  readonly gives: { readonly value: number; readonly dimension: Dimension } | null;
}

const USE: Readonly<Record<HopUse, string>> = { boil: "boil", stand: "hop stand", dry: "dry" };

/** Everything that goes into the beer, in the order in which it goes in. */
export function sheetRows(recipe: Recipe, ledger: Ledger): readonly SheetRow[] {
  return [...waterRows(recipe, ledger), ...fermentableRows(recipe, ledger), ...hopRows(recipe, ledger)];
}

function waterRows({ water }: Recipe, { quantities }: Ledger): SheetRow[] {
  const poured = [
    { name: "Mash water", value: quantities["water.mash"] },
    { name: "Sparge water", value: quantities["water.sparge"] },
    { name: "Water after the boil", value: quantities["water.topUp"] },
  ].flatMap(({ name, value }): SheetRow[] =>
    value === null || value === 0 ? [] : [{ key: name, name, when: "water", value, dimension: "volume", gives: null }],
  );
  const salts = Object.entries(water.salts).flatMap(([salt, grams]): SheetRow[] => {
    const name = SALT_FIELDS[salt as keyof typeof SALT_FIELDS].label;
    return [{ key: salt, name, when: "water", value: grams, dimension: "grams", gives: null }];
  });
  const { acid } = water;
  const acids: SheetRow[] =
    acid === null
      ? []
      : [
          {
            key: "acid",
            name: nameOfAcid(acid.solution),
            when: "mash water",
            value: acid.ml,
            dimension: null,
            gives: null,
          },
        ];
  return [...poured, ...salts, ...acids];
}

function nameOfAcid(solution: AcidSolution): string {
  const name = acidName(solution);
  return name === null ? `Acid (${solution.acid})` : ACID_LABELS[name];
}

function fermentableRows({ fermentables }: Recipe, ledger: Ledger): SheetRow[] {
  return fermentables.map((row, i) => ({
    key: `fermentable ${String(i)}`,
    name: row.name,
    when: row.station,
    value: row.kg,
    dimension: "mass",
    gives: { value: ledger.fermentables[i]?.share ?? 0, dimension: "fraction" },
  }));
}

function hopRows({ hops }: Recipe, ledger: Ledger): SheetRow[] {
  return hops.map((hop, i) => ({
    key: `hop ${String(i)}`,
    name: hop.name,
    when: hop.use === "dry" ? USE.dry : `${USE[hop.use]}, ${String(hop.minutes)} min`,
    value: hop.grams,
    dimension: "grams",
    gives: hop.use === "dry" ? null : { value: ledger.hops[i]?.ibu ?? 0, dimension: "bitterness" },
  }));
}
