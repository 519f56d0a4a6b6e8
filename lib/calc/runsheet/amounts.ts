import { SALTS, type Acid, type Salt } from "../water";
import type { RunSheetInput } from "./step-drafts";
import type { StepAmount } from "./step";

const SALT_NAMES: Readonly<Record<Salt, string>> = {
  gypsum: "Gypsum",
  calciumChlorideDihydrate: "Calcium chloride dihydrate",
  epsomSalt: "Epsom salt",
  tableSalt: "Table salt",
  bakingSoda: "Baking soda",
  chalk: "Chalk",
  slakedLime: "Slaked lime",
};

const ACID_WORDS: Readonly<Record<Acid, string>> = {
  lactic: "Lactic acid",
  phosphoric: "Phosphoric acid",
  hydrochloric: "Hydrochloric acid",
  sulfuric: "Sulfuric acid",
  citric: "Citric acid",
};

/**
 * Gives an amount of water to pour.
 *
 * @returns One amount, L; none where there is nothing to pour.
 */
export function waterAmount(name: string, litres: number): StepAmount[] {
  return litres > 0 ? [{ name, value: litres, unit: "L" }] : [];
}

/**
 * Lists the fermentables that go in at one station.
 *
 * @returns Amounts, kg; the grist in equal parts where it is mashed more than once.
 */
export function fermentableAmounts(a: RunSheetInput, station: "mash" | "kettle"): StepAmount[] {
  const parts = station === "mash" ? a.recipe.mashes : 1;
  return a.recipe.fermentables
    .filter((row) => row.station === station && row.kg > 0)
    .map(({ name, kg }) => ({ name, value: kg / parts, unit: "kg" }));
}

/**
 * Lists everything that is weighed before the kettle is filled.
 *
 * @returns All fermentables, kg, all salts, g, and the acid, mL.
 */
export function weighedAmounts(a: RunSheetInput): StepAmount[] {
  const fermentables = a.recipe.fermentables
    .filter((row) => row.kg > 0)
    .map(({ name, kg }): StepAmount => ({ name, value: kg, unit: "kg" }));
  return [...fermentables, ...saltAmounts(a, 1), ...acidAmount(a, 1)];
}

/**
 * Lists the salts for a share of the brewing water: the recipe's salts are for mash and sparge water together.
 *
 * @returns Amounts, g.
 */
export function saltAmounts(a: RunSheetInput, share: number): StepAmount[] {
  return SALTS.flatMap((salt): StepAmount[] => {
    const grams = a.recipe.water.salts[salt] ?? 0;
    return grams * share > 0 ? [{ name: SALT_NAMES[salt], value: grams * share, unit: "g" }] : [];
  });
}

/**
 * Gives the acid for a share of the mash water.
 *
 * @returns One amount, mL of the solution as it stands in its bottle; none for a recipe without acid.
 */
export function acidAmount({ recipe }: RunSheetInput, share: number): StepAmount[] {
  const { acid } = recipe.water;
  if (acid === null || acid.ml * share <= 0) return [];
  const percent = String(Number((100 * acid.solution.massFraction).toPrecision(3)));
  return [{ name: `${ACID_WORDS[acid.solution.acid]} ${percent} %`, value: acid.ml * share, unit: "mL" }];
}

/**
 * Finds the share of the mash and sparge water that a volume is.
 *
 * @returns Fraction.
 */
export function waterShare({ ledger }: RunSheetInput, litres: number): number {
  const all = (ledger.quantities["water.mash"] ?? 0) + (ledger.quantities["water.sparge"] ?? 0);
  return all > 0 ? litres / all : 0;
}
