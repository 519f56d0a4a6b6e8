import type { Fermentable, FermentableKind, HopAddition, HopUse, MashStep, Recipe } from "@/lib/calc/ledger";
import { minutes, type Quantity } from "@/lib/calc/units";
import type { MeasuredField } from "@/lib/model/field";
import { FERMENTABLE_FIELDS, HOP_FIELDS, MASH_STEP_FIELDS } from "@/lib/model/recipe-fields";
import { cellName, type Column, type Draft, type GristList, type HopList, type Row, type RowList } from "./draft";
import type { DraftReader } from "./draft-reader";
import { EMPTY } from "./entry";
import { cellLabel, type RowNames } from "./row-labels";

/** Which row of the draft became which row of the recipe. */
export interface RowKeys {
  readonly fermentables: readonly string[];
  readonly hops: readonly string[];
}

const GRIST: readonly GristList[] = ["mashGrist", "kettleGrist"];
const HOPS: readonly (readonly [HopList, HopUse])[] = [
  ["boilHops", "boil"],
  ["standHops", "stand"],
  ["dryHops", "dry"],
];
const KINDS: readonly FermentableKind[] = ["malt", "adjunct", "sugar", "malt extract"];

/** Reads the rows of a draft. A row without name and amount has only been added, and is passed over. */
export function readRows(
  draft: Draft,
  reader: DraftReader,
  names: RowNames,
): { readonly rows: Pick<Recipe, "mash" | "fermentables" | "hops">; readonly keys: RowKeys } {
  const mash: MashStep[] = [];
  const fermentables: Fermentable[] = [];
  const hops: HopAddition[] = [];
  const keys = { fermentables: new Array<string>(), hops: new Array<string>() };
  for (const at of rowsOf({ draft, reader, names }, "steps", "mash")) {
    const step = at(mash.length);
    if (step.isBlank) continue;
    mash.push({
      celsius: step.number("celsius", MASH_STEP_FIELDS.celsius),
      minutes: step.number("minutes", MASH_STEP_FIELDS.minutes),
    });
  }
  for (const list of GRIST) {
    for (const at of rowsOf({ draft, reader, names }, list, "fermentables")) {
      const row = at(fermentables.length);
      if (row.isBlank) continue;
      keys.fermentables.push(row.key);
      fermentables.push(fermentable(row, list));
    }
  }
  for (const [list, use] of HOPS) {
    for (const at of rowsOf({ draft, reader, names }, list, "hops")) {
      const row = at(hops.length);
      if (row.isBlank) continue;
      // The use of a hop is the list it stands in; a message about it stands at its name.
      reader.controls.set(`hops.${hops.length}.use`, `${row.key}.name`);
      keys.hops.push(row.key);
      hops.push(hop(row, use));
    }
  }
  return { rows: { mash, fermentables, hops }, keys };
}

interface RowReader {
  readonly key: string;
  readonly isBlank: boolean;
  readonly isFilled: (column: Column) => boolean;
  readonly name: () => string;
  readonly kind: () => FermentableKind;
  readonly number: <U extends string>(column: Column, field: MeasuredField<U>) => Quantity<U>;
  readonly optional: <U extends string>(column: Column, field: MeasuredField<U>) => Quantity<U> | null;
}

/** For each row of a list, a reader that is told the row's place in the recipe. */
function rowsOf(
  { draft, reader, names }: { readonly draft: Draft; readonly reader: DraftReader; readonly names: RowNames },
  list: RowList,
  stem: string,
): ((place: number) => RowReader)[] {
  return draft.rows[list].map((row) => (place) => {
    const called = names.get(`${list}.${row.key}`) ?? "";
    const cell = <U extends string>(column: Column, field: MeasuredField<U>) => ({
      name: cellName(list, row.key, column),
      path: `${stem}.${place}.${column}`,
      entry: row.cells[column] ?? EMPTY,
      label: cellLabel(called, column),
      field,
    });
    return {
      key: `${list}.${row.key}`,
      isBlank: isBlank(row),
      isFilled: (column) => (row.cells[column]?.text.trim() ?? "") !== "",
      name: () => reader.word({ ...cell("name", FERMENTABLE_FIELDS.kg) }),
      kind: () => KINDS.find((kind) => kind === row.cells.kind?.text) ?? "malt",
      number: (column, field) => reader.number(cell(column, field)),
      optional: (column, field) => reader.optional(cell(column, field)),
    };
  });
}

function isBlank({ cells }: Row): boolean {
  return [cells.name, cells.kg, cells.grams, cells.celsius, cells.minutes].every(
    (entry) => (entry?.text.trim() ?? "") === "",
  );
}

function fermentable(row: RowReader, list: GristList): Fermentable {
  return {
    name: row.name(),
    kind: row.kind(),
    kg: row.number("kg", FERMENTABLE_FIELDS.kg),
    extract: row.number("extract", FERMENTABLE_FIELDS.extract),
    moisture: row.number("moisture", FERMENTABLE_FIELDS.moisture),
    colour: row.number("colour", FERMENTABLE_FIELDS.colour),
    station: list === "mashGrist" ? "mash" : "kettle",
    fermentability: row.optional("fermentability", FERMENTABLE_FIELDS.fermentability),
    acidity: acidity(row),
  };
}

/** It comes with the name from the lists; what is not listed is guessed from its colour. One figure asks for all three. */
function acidity(row: RowReader): Fermentable["acidity"] {
  if (!(["distilledWaterPh", "buffering", "lacticFraction"] as const).some(row.isFilled)) return null;
  return {
    distilledWaterPh: row.number("distilledWaterPh", FERMENTABLE_FIELDS.distilledWaterPh),
    buffering: row.number("buffering", FERMENTABLE_FIELDS.buffering),
    lacticFraction: row.number("lacticFraction", FERMENTABLE_FIELDS.lacticFraction),
  };
}

function hop(row: RowReader, use: HopUse): HopAddition {
  return {
    name: row.name(),
    grams: row.number("grams", HOP_FIELDS.grams),
    alpha: row.number("alpha", HOP_FIELDS.alpha),
    use,
    minutes: use === "dry" ? minutes(0) : row.number("minutes", HOP_FIELDS.minutes),
  };
}
