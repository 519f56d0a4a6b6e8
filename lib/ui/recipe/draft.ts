import { IONS, SALTS, type Ion, type Salt } from "@/lib/calc/water";
import { AMBIENT_FIELDS } from "@/lib/model/ambient-fields";
import type { MeasuredField } from "@/lib/model/field";
import {
  ACID_FIELDS,
  FERMENTABLE_FIELDS,
  HOP_FIELDS,
  ION_FIELDS,
  MASH_STEP_FIELDS,
  PACKAGING_FIELDS,
  RECIPE_FIELDS,
  SALT_FIELDS,
  STAND_FIELDS,
  YEAST_FIELDS,
} from "@/lib/model/recipe-fields";
import type { Entry } from "./entry";

/** Every single number of a draft, by the name of its field. */
export const NUMBER_FIELDS = {
  intoFermenter: RECIPE_FIELDS.intoFermenter,
  topUp: RECIPE_FIELDS.topUp,
  thickness: RECIPE_FIELDS.thickness,
  boil: RECIPE_FIELDS.boil,
  "stand.celsius": STAND_FIELDS.celsius,
  "stand.minutes": STAND_FIELDS.minutes,
  "yeast.attenuationLow": YEAST_FIELDS.attenuationLow,
  "yeast.attenuationHigh": YEAST_FIELDS.attenuationHigh,
  "yeast.pitch": YEAST_FIELDS.pitch,
  "yeast.celsius": YEAST_FIELDS.celsius,
  "packaging.carbonation": PACKAGING_FIELDS.carbonation,
  "packaging.warmest": PACKAGING_FIELDS.warmest,
  "packaging.rated": PACKAGING_FIELDS.rated,
  "water.acidMl": ACID_FIELDS.ml,
  "ambient.air": AMBIENT_FIELDS.air,
  "ambient.humidity": AMBIENT_FIELDS.humidity,
  "ambient.tapWater": AMBIENT_FIELDS.tapWater,
  "ambient.grain": AMBIENT_FIELDS.grain,
} as const satisfies Record<string, MeasuredField>;

type NumberName = keyof typeof NUMBER_FIELDS;
type IonName = `water.source.${Ion}`;
type SaltName = `water.salts.${Salt}`;

export const ionName = (ion: Ion): IonName => `water.source.${ion}`;
export const saltName = (salt: Salt): SaltName => `water.salts.${salt}`;

/** Words and choices. `water.acid` is a strength of the library, or empty for none. `stand` is "yes" or "no"; `mashes` "1" or "2"; `packaging.priming` empty for carbonation by cylinder. */
export const WORD_FIELDS = [
  "title",
  "style",
  "notes",
  "mashes",
  "stand",
  "yeast.name",
  "packaging.container",
  "packaging.priming",
  "water.acid",
] as const;
export type WordName = (typeof WORD_FIELDS)[number];

export type MeasuredName = NumberName | IonName | SaltName;
export type DraftField = MeasuredName | WordName;

const WATER_FIELDS = new Map<string, MeasuredField>([
  ...IONS.map((ion) => [ionName(ion), ION_FIELDS[ion]] as const),
  ...SALTS.map((salt) => [saltName(salt), SALT_FIELDS[salt]] as const),
]);

const WORDS: ReadonlySet<string> = new Set(WORD_FIELDS);

export function isWordField(name: DraftField): name is WordName {
  return WORDS.has(name);
}

export function measuredFieldOf(name: MeasuredName): MeasuredField {
  const known: Readonly<Record<string, MeasuredField>> = NUMBER_FIELDS;
  const field = known[name] ?? WATER_FIELDS.get(name);
  if (field === undefined) throw new Error(`no such field: ${name}`);
  return field;
}

/** The numbers of a row by list; the order is that of the screen. */
export const ROW_FIELDS = {
  steps: { celsius: MASH_STEP_FIELDS.celsius, minutes: MASH_STEP_FIELDS.minutes },
  mashGrist: FERMENTABLE_FIELDS,
  kettleGrist: FERMENTABLE_FIELDS,
  boilHops: HOP_FIELDS,
  standHops: HOP_FIELDS,
  dryHops: HOP_FIELDS,
} as const;

export type RowList = keyof typeof ROW_FIELDS;
export const ROW_LISTS = Object.keys(ROW_FIELDS) as readonly RowList[]; // the keys of the type are the keys of the object
export type GristList = "mashGrist" | "kettleGrist";
export type HopList = "boilHops" | "standHops" | "dryHops";

export type Column =
  | "name"
  | "kind"
  | "celsius"
  | "minutes"
  | "kg"
  | "extract"
  | "moisture"
  | "colour"
  | "fermentability"
  | "distilledWaterPh"
  | "buffering"
  | "lacticFraction"
  | "grams"
  | "alpha";

export interface Row {
  /** Stays with the row while it moves. */
  readonly key: string;
  readonly cells: Readonly<Partial<Record<Column, Entry>>>;
}

/** A recipe as it is being written: text, not numbers. */
export interface Draft {
  readonly fields: Readonly<Record<DraftField, Entry>>;
  readonly rows: Readonly<Record<RowList, readonly Row[]>>;
}

/** The number in a column; null for a word. */
export function rowField(list: RowList, column: Column): MeasuredField | null {
  const fields: Readonly<Partial<Record<Column, MeasuredField>>> = ROW_FIELDS[list];
  return fields[column] ?? null;
}

/** The name of a cell's control, unique on the page and unchanged when its row moves. */
export function cellName(list: RowList, key: string, column: Column): string {
  return `${list}.${key}.${column}`;
}
