import type { Fermentable, HopAddition, MashStep, Recipe } from "@/lib/calc/ledger";
import type { MeasuredField } from "./field";
import { matchedRows, type MatchedRow } from "./matched-rows";
import type { RecipeChange } from "./recipe-change";
import { FERMENTABLE_FIELDS, HOP_FIELDS, MASH_STEP_FIELDS } from "./recipe-fields";
import { settingDifferences } from "./setting-differences";

/** What somebody changed between two texts of a recipe: rows matched by ingredient and station, and the settings. */
export function recipeDifference(before: Recipe, after: Recipe): readonly RecipeChange[] {
  return [
    ...rowChanges("Fermentables", fermentables(before, after), fermentableName, FERMENTABLE_NUMBERS, FERMENTABLE_WORDS),
    ...rowChanges("Hops", hops(before, after), hopName, HOP_NUMBERS, HOP_WORDS),
    ...rowChanges("Mash steps", steps(before, after), () => "Step", STEP_NUMBERS, []),
    ...settingDifferences(before, after),
  ];
}

const folded = (text: string): string => text.trim().toLowerCase();

function fermentables(before: Recipe, after: Recipe): readonly MatchedRow<Fermentable>[] {
  return matchedRows(before.fermentables, after.fermentables, [
    (row) => `${folded(row.name)}|${row.station}|${row.kg}`,
    (row) => `${folded(row.name)}|${row.station}`,
    (row) => folded(row.name),
  ]);
}

function hops(before: Recipe, after: Recipe): readonly MatchedRow<HopAddition>[] {
  return matchedRows(before.hops, after.hops, [
    (row) => `${folded(row.name)}|${row.use}|${row.minutes}|${row.grams}`,
    (row) => `${folded(row.name)}|${row.use}|${row.minutes}`,
    (row) => `${folded(row.name)}|${row.use}`,
    (row) => folded(row.name),
  ]);
}

/** Steps have no name; the first is the first. */
function steps(before: Recipe, after: Recipe): readonly MatchedRow<MashStep>[] {
  return Array.from({ length: Math.max(before.mash.length, after.mash.length) }, (_, i) => ({
    before: before.mash[i] ?? null,
    after: after.mash[i] ?? null,
  }));
}

const fermentableName = ({ name, station }: Fermentable): string =>
  station === "mash" ? name : `${name}, into the kettle`;
const hopName = ({ name, use }: HopAddition): string => `${name}, ${USE_NAMES[use]}`;
const USE_NAMES: Readonly<Record<HopAddition["use"], string>> = { boil: "boil", stand: "stand", dry: "dry hop" };

interface NumberOf<R> {
  readonly field: MeasuredField;
  readonly of: (row: R) => number | null;
}

interface WordOf<R> {
  readonly label: string;
  readonly of: (row: R) => string;
}

/** The first number of a row is its amount: a row that comes or goes is told by it alone. */
const FERMENTABLE_NUMBERS: readonly NumberOf<Fermentable>[] = [
  { field: FERMENTABLE_FIELDS.kg, of: (row) => row.kg },
  { field: FERMENTABLE_FIELDS.extract, of: (row) => row.extract },
  { field: FERMENTABLE_FIELDS.moisture, of: (row) => row.moisture },
  { field: FERMENTABLE_FIELDS.colour, of: (row) => row.colour },
  { field: FERMENTABLE_FIELDS.fermentability, of: (row) => row.fermentability },
  { field: FERMENTABLE_FIELDS.distilledWaterPh, of: (row) => row.acidity?.distilledWaterPh ?? null },
  { field: FERMENTABLE_FIELDS.buffering, of: (row) => row.acidity?.buffering ?? null },
  { field: FERMENTABLE_FIELDS.lacticFraction, of: (row) => row.acidity?.lacticFraction ?? null },
];
const FERMENTABLE_WORDS: readonly WordOf<Fermentable>[] = [
  { label: "Kind of fermentable", of: (row) => row.kind },
  { label: "Where it goes in", of: (row) => row.station },
];
const HOP_NUMBERS: readonly NumberOf<HopAddition>[] = [
  { field: HOP_FIELDS.grams, of: (row) => row.grams },
  { field: HOP_FIELDS.alpha, of: (row) => row.alpha },
  { field: HOP_FIELDS.minutes, of: (row) => row.minutes },
];
const HOP_WORDS: readonly WordOf<HopAddition>[] = [{ label: "Use of the hop", of: (row) => USE_NAMES[row.use] }];
const STEP_NUMBERS: readonly NumberOf<MashStep>[] = [
  { field: MASH_STEP_FIELDS.celsius, of: (row) => row.celsius },
  { field: MASH_STEP_FIELDS.minutes, of: (row) => row.minutes },
];

function rowChanges<R>(
  group: RecipeChange["group"],
  rows: readonly MatchedRow<R>[],
  nameOf: (row: R) => string,
  numbers: readonly NumberOf<R>[],
  words: readonly WordOf<R>[],
): readonly RecipeChange[] {
  return rows.flatMap(({ before, after }, i) => {
    const named = after ?? before;
    if (named === null) return [];
    const what = group === "Mash steps" ? `${nameOf(named)} ${i + 1}` : nameOf(named);
    const kind = before === null ? "added" : after === null ? "removed" : "changed";
    const told = kind === "changed" || group === "Mash steps" ? numbers : numbers.slice(0, 1);
    const common = { group, what, kind } as const;
    return [
      ...told.flatMap(({ field, of }) => {
        const pair = { before: before === null ? null : of(before), after: after === null ? null : of(after) };
        if (pair.before === pair.after) return [];
        const { label, dimension, make } = field;
        const key = `${group}.${i}.${label}`;
        return [{ ...common, ...pair, key, field: label, dimension, unit: make.range.unit }];
      }),
      ...(before === null || after === null ? [] : words).flatMap(({ label, of }) => {
        const pair = { before: before === null ? null : of(before), after: after === null ? null : of(after) };
        if (pair.before === pair.after) return [];
        return [{ ...common, ...pair, key: `${group}.${i}.${label}`, field: label, dimension: null, unit: "" }];
      }),
    ];
  });
}
