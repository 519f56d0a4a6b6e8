import type { Ambient, PrimingSugar, Recipe } from "@/lib/calc/ledger";
import { ACID_SOLUTIONS, SALTS, type Ion, type Ions } from "@/lib/calc/water";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { recipeConflicts } from "@/lib/model/recipe-conflicts";
import { ION_FIELDS, SALT_FIELDS } from "@/lib/model/recipe-fields";
import { ACID_NAMES } from "./acid-names";
import { ionName, NUMBER_FIELDS, saltName, type Draft } from "./draft";
import { DraftReader } from "./draft-reader";
import { readRows, type RowKeys } from "./read-rows";
import { rowNames, type RowNames } from "./row-labels";

/** What a draft says when it is read. */
export interface DraftReading {
  /** null while a field cannot be read; `problems` says which. */
  readonly written: { readonly recipe: Recipe; readonly ambient: Ambient; readonly keys: RowKeys } | null;
  /** Messages by the name of the control. */
  readonly problems: FieldErrors;
  /** What was typed, by the path of the stored field. */
  readonly entered: Readonly<Record<string, string>>;
  /** The name of the control by the path of the stored field. */
  readonly controls: ReadonlyMap<string, string>;
  /** How each row is spoken of, by list and key. */
  readonly names: RowNames;
}

const PRIMING_SUGARS: readonly PrimingSugar[] = ["sucrose", "dextroseMonohydrate", "dextroseAnhydrous"];

/** Reads a draft as a recipe; the numbers without a unit are in the units of the person who writes. */
export function readDraft(draft: Draft, preferences: Preferences): DraftReading {
  const reader = new DraftReader(preferences);
  const names = rowNames(draft);
  const { rows, keys } = readRows(draft, reader, names);
  const recipe: Recipe = { ...rows, ...singles(draft, reader), water: waterOf(draft, reader) };
  const ambient: Ambient = {
    air: number(draft, reader, "ambient.air"),
    humidity: number(draft, reader, "ambient.humidity"),
    tapWater: number(draft, reader, "ambient.tapWater"),
    grain: number(draft, reader, "ambient.grain"),
  };
  if (recipe.fermentables.length === 0) {
    reader.problems.set("mashGrist", "A recipe needs at least one fermentable: malt, sugar or malt extract");
  }
  if (reader.problems.size === 0) {
    for (const { path, message } of recipeConflicts(recipe)) {
      const joined = path.join(".");
      reader.problems.set(reader.controls.get(joined) ?? joined, message);
    }
  }
  return {
    written: reader.problems.size === 0 ? { recipe, ambient, keys } : null,
    problems: Object.fromEntries(reader.problems),
    entered: Object.fromEntries(reader.entered),
    controls: reader.controls,
    names,
  };
}

function number<N extends keyof typeof NUMBER_FIELDS>(
  draft: Draft,
  reader: DraftReader,
  name: N,
): ReturnType<(typeof NUMBER_FIELDS)[N]["make"]> {
  // One name leads to one maker, which the union of all of them hides from the compiler.
  return reader.number({ name, path: name, entry: draft.fields[name], field: NUMBER_FIELDS[name] }) as ReturnType<
    (typeof NUMBER_FIELDS)[N]["make"]
  >;
}

type Singles = Omit<Recipe, "fermentables" | "hops" | "mash" | "water">;

function singles(draft: Draft, reader: DraftReader): Singles {
  const { fields } = draft;
  const of = <N extends keyof typeof NUMBER_FIELDS>(name: N) => number(draft, reader, name);
  return {
    intoFermenter: of("intoFermenter"),
    topUp: of("topUp"),
    thickness: fields.thickness.text.trim() === "" ? null : of("thickness"),
    boil: of("boil"),
    mashes: fields.mashes.text === "2" ? 2 : 1,
    stand: fields.stand.text === "yes" ? { celsius: of("stand.celsius"), minutes: of("stand.minutes") } : null,
    yeast: {
      name: reader.word({
        name: "yeast.name",
        path: "yeast.name",
        entry: fields["yeast.name"],
        label: "Name of the yeast",
      }),
      attenuationLow: of("yeast.attenuationLow"),
      attenuationHigh: of("yeast.attenuationHigh"),
      pitch: of("yeast.pitch"),
      celsius: of("yeast.celsius"),
    },
    packaging: {
      container: fields["packaging.container"].text === "keg" ? "keg" : "bottle",
      carbonation: of("packaging.carbonation"),
      priming: PRIMING_SUGARS.find((sugar) => sugar === fields["packaging.priming"].text) ?? null,
      warmest: of("packaging.warmest"),
      rated: of("packaging.rated"),
    },
  };
}

function waterOf({ fields }: Draft, reader: DraftReader): Recipe["water"] {
  const ion = (of: Ion) => {
    const name = ionName(of);
    return reader.number({ name, path: name, entry: fields[name], field: ION_FIELDS[of] });
  };
  const salts = SALTS.flatMap((salt) => {
    const name = saltName(salt);
    const grams = reader.optional({ name, path: name, entry: fields[name], field: SALT_FIELDS[salt] });
    return grams === null ? [] : [[salt, grams] as const];
  });
  const source: Ions = {
    calcium: ion("calcium"),
    magnesium: ion("magnesium"),
    sodium: ion("sodium"),
    sulfate: ion("sulfate"),
    chloride: ion("chloride"),
    bicarbonate: ion("bicarbonate"),
  };
  return { source, salts: Object.fromEntries(salts), acid: acidOf({ fields }, reader) };
}

function acidOf({ fields }: Pick<Draft, "fields">, reader: DraftReader): Recipe["water"]["acid"] {
  const named = ACID_NAMES.find((name) => name === fields["water.acid"].text);
  if (named === undefined) return null;
  const ml = reader.optional({
    name: "water.acidMl",
    path: "water.acid.ml",
    entry: fields["water.acidMl"],
    field: NUMBER_FIELDS["water.acidMl"],
  });
  return ml === null ? null : { solution: ACID_SOLUTIONS[named], ml };
}
