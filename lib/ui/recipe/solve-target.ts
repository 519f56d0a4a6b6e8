import type { Dimension, Recipe } from "@/lib/calc/ledger";
import { findRoot } from "@/lib/calc/numerics";
import { fraction, grams, kilograms, litres, milligramsPerLitre, millilitres } from "@/lib/calc/units";
import { ionsFromSalts, IONS, saltsFor, type AcidSolution, type Ion, type Ions } from "@/lib/calc/water";
import { FERMENTABLE_FIELDS, HOP_FIELDS } from "@/lib/model/recipe-fields";
import type { Brewed } from "./compute";
import { brewAs, solveAlong, timesGrid, type Found } from "./solve-along";

/** A number that the beer should have, in place of an amount. Rows by their place in the recipe. */
export type Target =
  | { readonly kind: "gravity"; readonly wanted: number }
  | { readonly kind: "bitterness"; readonly hop: number; readonly wanted: number }
  | { readonly kind: "colour"; readonly fermentable: number; readonly wanted: number }
  | { readonly kind: "mash pH"; readonly acid: AcidSolution; readonly wanted: number }
  | { readonly kind: "ions"; readonly wanted: Readonly<Partial<Record<Ion, number>>> };

export type SolvedTarget =
  | {
      readonly ok: true;
      readonly recipe: Recipe;
      /** Ions that the salts leave off the target, reached less wanted, mg/L; empty where it is met. */
      readonly residual: Readonly<Partial<Record<Ion, number>>>;
    }
  | {
      readonly ok: false;
      readonly why: string;
      readonly reachable: { readonly low: number; readonly high: number; readonly dimension: Dimension } | null;
    };

/** Solves the amounts that meet a target; every number on the way is brewed. Nothing of the recipe is changed here. */
export function solveTarget(target: Target, brewed: Brewed): SolvedTarget {
  switch (target.kind) {
    case "gravity":
      return told(gravity(brewed, target.wanted), "No amount of this grist gives that gravity", "extract");
    case "bitterness":
      return told(bitterness(brewed, target), "No amount of this hop gives that bitterness", "bitterness");
    case "colour":
      return told(colour(brewed, target), "No amount of this row gives that colour at the same strength", "colour");
    case "mash pH":
      return told(mashPh(brewed, target), "This acid, which only ever lowers the pH, does not give it", "ph");
    case "ions":
      return ions(brewed, target.wanted);
  }
}

function told(found: Found, why: string, dimension: Dimension): SolvedTarget {
  if (found.ok) return { ok: true, recipe: found.recipe, residual: {} };
  return { ok: false, why, reachable: found.reachable === null ? null : { ...found.reachable, dimension } };
}

/** The whole grist in its proportions. */
function scaled(recipe: Recipe, by: number, except: number | null = null): Recipe | null {
  const { min, max } = FERMENTABLE_FIELDS.kg;
  const rows = recipe.fermentables.map((row, i) => ({ ...row, kg: i === except ? row.kg : row.kg * by }));
  if (rows.some(({ kg }) => kg < min || kg > max)) return null;
  return { ...recipe, fermentables: rows.map((row) => ({ ...row, kg: kilograms(row.kg) })) };
}

function gravity(brewed: Brewed, wanted: number): Found {
  return solveAlong({
    brewed,
    at: (by) => scaled(brewed.recipe, by),
    read: ({ quantities }) => quantities["fermenter.originalExtract"],
    wanted,
    grid: timesGrid(0.02, 20, 60),
  });
}

function bitterness(brewed: Brewed, { hop, wanted }: { readonly hop: number; readonly wanted: number }): Found {
  const { recipe } = brewed;
  const { min, max } = HOP_FIELDS.grams;
  return solveAlong({
    brewed,
    at: (weight) => ({
      ...recipe,
      hops: recipe.hops.map((row, i) => (i === hop ? { ...row, grams: grams(weight) } : row)),
    }),
    read: ({ hops }) => hops[hop]?.ibu ?? null,
    wanted,
    grid: timesGrid(min, Math.min(max, 250 * recipe.intoFermenter), 40),
  });
}

/** One row carries the colour; the others give way or fill up, so that the strength stays. */
function colour(
  brewed: Brewed,
  { fermentable, wanted }: { readonly fermentable: number; readonly wanted: number },
): Found {
  const { recipe } = brewed;
  const strength = brewed.ledger.quantities["fermenter.originalExtract"] ?? 0;
  const all = recipe.fermentables.reduce((sum, { kg }) => sum + kg, 0);
  return solveAlong({
    brewed,
    at: (kg) => {
      const fermentables = recipe.fermentables.map((row, i) =>
        i === fermentable ? { ...row, kg: kilograms(kg) } : row,
      );
      return atStrength({ ...recipe, fermentables }, fermentable, strength, brewed);
    },
    read: ({ quantities }) => quantities["fermenter.colour"],
    wanted,
    grid: timesGrid(FERMENTABLE_FIELDS.kg.min, Math.max(0.01, all), 16),
  });
}

function atStrength(recipe: Recipe, except: number, strength: number, brewed: Brewed): Recipe | null {
  const off = (by: number): number => {
    const tried = scaled(recipe, by, except);
    const outcome = tried === null ? null : brewAs(tried, brewed);
    return (outcome?.ledger.quantities["fermenter.originalExtract"] ?? NaN) - strength;
  };
  // The others scale by about this much; too wide a bracket would leave what brews at all.
  for (const [low, high] of [
    [0.8, 1.2],
    [0.3, 1.6],
    [0.02, 3],
  ] as const) {
    const root = findRoot({ f: off, low, high, tolerance: 1e-12 });
    if (root.ok) return scaled(recipe, root.x, except);
  }
  return null;
}

const MOST_ACID_ML_PER_L = 20;

function mashPh(brewed: Brewed, { acid, wanted }: { readonly acid: AcidSolution; readonly wanted: number }): Found {
  const { recipe, ledger } = brewed;
  const most = MOST_ACID_ML_PER_L * (ledger.quantities["water.mash"] ?? 0);
  return solveAlong({
    brewed,
    at: (ml) => ({ ...recipe, water: { ...recipe.water, acid: { solution: acid, ml: millilitres(ml) } } }),
    read: ({ quantities }) => quantities["mash.ph"],
    wanted,
    grid: [0, ...timesGrid(most / 2000, most, 24)],
  });
}

/** An ion is met as near as a laboratory tells. */
const MET_WITHIN_MG_PER_L = 1;

function ions({ recipe, ledger, ...day }: Brewed, wanted: Readonly<Partial<Record<Ion, number>>>): SolvedTarget {
  const { quantities } = ledger;
  const hotWater = litres((quantities["water.mash"] ?? 0) + (quantities["water.sparge"] ?? 0));
  const { source, salts } = recipe.water;
  const now = ionsFromSalts({ litres: hotWater, grams: salts });
  // What the acid brings stays, and so does an ion that nobody asked for.
  const fromAcid = (ion: Ion): number => (quantities[`water.${ion}`] ?? 0) - source[ion] - now[ion];
  const aim = (ion: Ion): number => {
    const asked = wanted[ion];
    return asked === undefined ? source[ion] + now[ion] : Math.max(0, asked - fromAcid(ion));
  };
  const found = saltsFor({ source, target: ionsBy(aim), litres: hotWater, mostDemineralised: fraction(0) });
  const used = Object.entries(found.grams).filter(([, weight]) => weight > 0.005);
  const solved = { ...recipe, water: { ...recipe.water, salts: Object.fromEntries(used) } };
  const brewed = brewAs(solved, { recipe, ledger, ...day });
  if (brewed === null) return { ok: false, why: "With these salts nothing brews", reachable: null };
  const off = IONS.flatMap((ion) => {
    const asked = wanted[ion];
    const by = (brewed.ledger.quantities[`water.${ion}`] ?? 0) - (asked ?? 0);
    return asked === undefined || Math.abs(by) <= MET_WITHIN_MG_PER_L ? [] : [[ion, by] as const];
  });
  return { ok: true, recipe: solved, residual: Object.fromEntries(off) };
}

function ionsBy(of: (ion: Ion) => number): Ions {
  const each = (ion: Ion): Ions[Ion] => milligramsPerLitre(of(ion));
  return {
    calcium: each("calcium"),
    magnesium: each("magnesium"),
    sodium: each("sodium"),
    sulfate: each("sulfate"),
    chloride: each("chloride"),
    bicarbonate: each("bicarbonate"),
  };
}
