import type { Fermentable, HopAddition, HopUse, MashStep } from "@/lib/calc/ledger";
import { IONS, SALTS } from "@/lib/calc/water";
import type { AMBIENT_FIELDS } from "@/lib/model/ambient-fields";
import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { FERMENTABLE_FIELDS, HOP_FIELDS, ION_FIELDS, MASH_STEP_FIELDS, SALT_FIELDS } from "@/lib/model/recipe-fields";
import { acidName } from "./acid-names";
import { ionName, NUMBER_FIELDS, saltName, type Draft, type MeasuredName, type Row } from "./draft";
import { EMPTY, stored, word, type Entry } from "./entry";

interface Source {
  readonly title: string;
  readonly content: RecipeContent;
  readonly preferences: Preferences;
}

type Text = (path: string, field: MeasuredField, value: number | null | undefined) => Entry;

/** Opens a stored revision for writing, in the units of one person. */
export function draftFromContent(source: Source): Draft {
  const { content, preferences } = source;
  const { recipe, entered } = content;
  const text: Text = (path, field, value) =>
    value === null || value === undefined ? EMPTY : stored({ field, value, entered: entered[path], preferences });

  const grist = recipe.fermentables.map((row, index) => ({ row, index }));
  const hops = recipe.hops.map((row, index) => ({ row, index }));
  const at = (station: Fermentable["station"]): Row[] =>
    grist.filter(({ row }) => row.station === station).map(({ row, index }) => fermentableRow(row, index, text));
  const used = (use: HopUse): Row[] =>
    hops.filter(({ row }) => row.use === use).map(({ row, index }) => hopRow(row, index, text));
  return {
    fields: { ...numbers(source, text), ...water(content, text), ...words(source) },
    rows: {
      steps: recipe.mash.map((step, index) => stepRow(step, index, text)),
      mashGrist: at("mash"),
      kettleGrist: at("kettle"),
      boilHops: used("boil"),
      standHops: used("stand"),
      dryHops: used("dry"),
    },
  };
}

type Numbers = Record<keyof typeof NUMBER_FIELDS, Entry>;

function numbers({ content }: Source, text: Text): Numbers {
  const { recipe, writtenOn } = content;
  const { stand, yeast, packaging } = recipe;
  const { ambient } = writtenOn;
  const of = (name: keyof Numbers, value: number | null): Entry => text(name, NUMBER_FIELDS[name], value);
  const day = (name: keyof typeof AMBIENT_FIELDS): Entry => of(`ambient.${name}`, ambient[name]);
  return {
    intoFermenter: of("intoFermenter", recipe.intoFermenter),
    topUp: of("topUp", recipe.topUp),
    thickness: of("thickness", recipe.thickness),
    boil: of("boil", recipe.boil),
    "stand.celsius": of("stand.celsius", stand?.celsius ?? null),
    "stand.minutes": of("stand.minutes", stand?.minutes ?? null),
    "yeast.attenuationLow": of("yeast.attenuationLow", yeast.attenuationLow),
    "yeast.attenuationHigh": of("yeast.attenuationHigh", yeast.attenuationHigh),
    "yeast.pitch": of("yeast.pitch", yeast.pitch),
    "yeast.celsius": of("yeast.celsius", yeast.celsius),
    "packaging.carbonation": of("packaging.carbonation", packaging.carbonation),
    "packaging.warmest": of("packaging.warmest", packaging.warmest),
    "packaging.rated": of("packaging.rated", packaging.rated),
    "water.acidMl": of("water.acidMl", recipe.water.acid?.ml ?? null),
    "ambient.air": day("air"),
    "ambient.humidity": day("humidity"),
    "ambient.tapWater": day("tapWater"),
    "ambient.grain": day("grain"),
  };
}

type WaterEntries = Record<Exclude<MeasuredName, keyof Numbers>, Entry>;

function water({ recipe }: RecipeContent, text: Text): WaterEntries {
  const { source, salts } = recipe.water;
  const entries = [
    ...IONS.map((ion) => [ionName(ion), text(ionName(ion), ION_FIELDS[ion], source[ion])] as const),
    ...SALTS.map((salt) => [saltName(salt), text(saltName(salt), SALT_FIELDS[salt], salts[salt])] as const),
  ];
  // Both lists are complete, which fromEntries cannot know.
  return Object.fromEntries(entries) as WaterEntries;
}

function words({ title, content }: Source) {
  const { recipe, style, notes } = content;
  return {
    title: word(title),
    style: word(style ?? ""),
    notes: word(notes),
    mashes: word(String(recipe.mashes)),
    stand: word(recipe.stand === null ? "no" : "yes"),
    "yeast.name": word(recipe.yeast.name),
    "packaging.container": word(recipe.packaging.container),
    "packaging.priming": word(recipe.packaging.priming ?? ""),
    "water.acid": word(acidName(recipe.water.acid?.solution ?? null) ?? ""),
  };
}

function stepRow(step: MashStep, index: number, text: Text): Row {
  const path = `mash.${index}`;
  return {
    key: `stored-${index}`,
    cells: {
      celsius: text(`${path}.celsius`, MASH_STEP_FIELDS.celsius, step.celsius),
      minutes: text(`${path}.minutes`, MASH_STEP_FIELDS.minutes, step.minutes),
    },
  };
}

function fermentableRow(row: Fermentable, index: number, text: Text): Row {
  const { acidity, ...figures } = row;
  const values = { ...figures, ...acidity };
  const of = (column: keyof typeof FERMENTABLE_FIELDS): Entry =>
    text(`fermentables.${index}.${column}`, FERMENTABLE_FIELDS[column], values[column]);
  return {
    key: `stored-${index}`,
    cells: {
      name: word(row.name),
      kind: word(row.kind),
      kg: of("kg"),
      extract: of("extract"),
      moisture: of("moisture"),
      colour: of("colour"),
      fermentability: of("fermentability"),
      distilledWaterPh: of("distilledWaterPh"),
      buffering: of("buffering"),
      lacticFraction: of("lacticFraction"),
    },
  };
}

function hopRow(row: HopAddition, index: number, text: Text): Row {
  const of = (column: keyof typeof HOP_FIELDS): Entry =>
    text(`hops.${index}.${column}`, HOP_FIELDS[column], row[column]);
  return {
    key: `stored-${index}`,
    cells: { name: word(row.name), grams: of("grams"), alpha: of("alpha"), minutes: of("minutes") },
  };
}
