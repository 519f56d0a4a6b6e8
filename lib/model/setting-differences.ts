import type { Recipe } from "@/lib/calc/ledger";
import type { MeasuredField } from "./field";
import type { RecipeChange } from "./recipe-change";
import {
  ACID_FIELDS,
  ION_FIELDS,
  PACKAGING_FIELDS,
  RECIPE_FIELDS,
  SALT_FIELDS,
  STAND_FIELDS,
  YEAST_FIELDS,
} from "./recipe-fields";

type Setting = readonly [field: MeasuredField, of: (recipe: Recipe) => number | null];

const SETTINGS: readonly Setting[] = [
  [RECIPE_FIELDS.intoFermenter, (recipe) => recipe.intoFermenter],
  [RECIPE_FIELDS.topUp, (recipe) => recipe.topUp],
  [RECIPE_FIELDS.thickness, (recipe) => recipe.thickness],
  [RECIPE_FIELDS.boil, (recipe) => recipe.boil],
  [STAND_FIELDS.celsius, (recipe) => recipe.stand?.celsius ?? null],
  [STAND_FIELDS.minutes, (recipe) => recipe.stand?.minutes ?? null],
  [YEAST_FIELDS.attenuationLow, (recipe) => recipe.yeast.attenuationLow],
  [YEAST_FIELDS.attenuationHigh, (recipe) => recipe.yeast.attenuationHigh],
  [YEAST_FIELDS.pitch, (recipe) => recipe.yeast.pitch],
  [YEAST_FIELDS.celsius, (recipe) => recipe.yeast.celsius],
  [PACKAGING_FIELDS.carbonation, (recipe) => recipe.packaging.carbonation],
  [PACKAGING_FIELDS.warmest, (recipe) => recipe.packaging.warmest],
  [PACKAGING_FIELDS.rated, (recipe) => recipe.packaging.rated],
];

const IONS = Object.keys(ION_FIELDS) as readonly (keyof typeof ION_FIELDS)[]; // the keys of the table are its names
const SALTS = Object.keys(SALT_FIELDS) as readonly (keyof typeof SALT_FIELDS)[];

const WATER: readonly Setting[] = [
  ...IONS.map((ion): Setting => [ION_FIELDS[ion], (recipe) => recipe.water.source[ion]]),
  // A salt that is left out is none of it, which is not the same as unknown.
  ...SALTS.map((salt): Setting => [SALT_FIELDS[salt], (recipe) => recipe.water.salts[salt] ?? 0]),
  [ACID_FIELDS.ml, (recipe) => recipe.water.acid?.ml ?? 0],
];

type Word = readonly [what: string, of: (recipe: Recipe) => string | null];

const WORDS: readonly Word[] = [
  ["Mashes", (recipe) => String(recipe.mashes)],
  ["Yeast", (recipe) => recipe.yeast.name],
  ["Container", (recipe) => recipe.packaging.container],
  ["Priming sugar", (recipe) => recipe.packaging.priming],
];

/** Every setting outside of the rows that is not the same. */
export function settingDifferences(before: Recipe, after: Recipe): readonly RecipeChange[] {
  return [
    ...numbers("Settings", SETTINGS, before, after),
    ...words(before, after),
    ...numbers("Water", WATER, before, after),
  ];
}

function numbers(
  group: "Settings" | "Water",
  settings: readonly Setting[],
  before: Recipe,
  after: Recipe,
): readonly RecipeChange[] {
  return settings.flatMap(([{ label, dimension, make }, of]) => {
    const pair = { before: of(before), after: of(after) };
    if (pair.before === pair.after) return [];
    return [
      { ...pair, group, key: label, what: label, field: "", kind: kindOf(pair), dimension, unit: make.range.unit },
    ];
  });
}

function words(before: Recipe, after: Recipe): readonly RecipeChange[] {
  return WORDS.flatMap(([what, of]) => {
    const pair = { before: of(before), after: of(after) };
    if (pair.before === pair.after) return [];
    return [
      {
        ...pair,
        group: "Settings" as const,
        key: what,
        what,
        field: "",
        kind: kindOf(pair),
        dimension: null,
        unit: "",
      },
    ];
  });
}

function kindOf(pair: { readonly before: unknown; readonly after: unknown }): RecipeChange["kind"] {
  if (pair.before === null) return "added";
  return pair.after === null ? "removed" : "changed";
}
