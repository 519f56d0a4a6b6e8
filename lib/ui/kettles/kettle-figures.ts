import type { WayOut } from "@/lib/calc/adapt";
import { intervals, type Interval, type Ledger, type Limit, type Recipe } from "@/lib/calc/ledger";
import { adaptWith, type AdaptationChoice } from "@/lib/model/adaptation";
import type { KettleToAdapt } from "@/lib/model/kettle-entry";
import type { RecipeContent } from "@/lib/model/recipe-content";
import type { WrittenIntention } from "@/lib/model/recipe-intention";
import { NUMBER_COLUMNS, type NumberColumn } from "./kettle-columns";

/** A way out as a row tells it, without its ledger. */
export type ToldWay = Pick<WayOut, "kind" | "also" | "figure" | "times" | "distance"> & {
  readonly intoFermenter: number;
};

/** What a recipe becomes on one kettle, as a row of the table shows it. */
export interface KettleFigures {
  readonly fit: "fits" | "way" | "not";
  /** The way out that it takes; null where it takes none. */
  readonly way: ToldWay | null;
  /** A way out was chosen that this kettle no longer has. */
  readonly isWayLost: boolean;
  /** The limits that it breaks as intended; empty where no grist reaches the strength. */
  readonly reasons: readonly Limit[];
  readonly values: Readonly<Record<NumberColumn, number | null>>;
  /** 80 % intervals of what is predicted; null until they are computed. */
  readonly intervals: Readonly<Partial<Record<NumberColumn, Interval>>> | null;
}

export interface KettleTask {
  readonly content: RecipeContent;
  readonly written: WrittenIntention;
  readonly kettle: KettleToAdapt;
  readonly choice: AdaptationChoice;
}

/** A brew that a row shows: along the way out that was chosen, or else as intended, maybe beyond the limits. */
export interface ShownBrew {
  readonly recipe: Recipe;
  readonly ledger: Ledger;
}

/** A row without its intervals, and the brew that it shows; null where nothing can be brewed. */
export function kettleFigures(task: KettleTask): { readonly figures: KettleFigures; readonly brew: ShownBrew | null } {
  const { content, written, kettle, choice } = task;
  const { equipment } = kettle;
  const lots = new Map(kettle.lots);
  const adapted = adaptWith({ content, written, equipment, choice, lots, wanted: "the chosen way" });
  const { outcome, chosen, isWayLost } = adapted;
  const way = chosen?.way ?? null;
  const brew = chosen ?? brewOf(outcome);
  const figures = {
    fit: outcome.ok ? ("fits" as const) : way === null ? ("not" as const) : ("way" as const),
    way: way === null ? null : toldWay(way),
    isWayLost,
    reasons: outcome.ok ? [] : outcome.reasons,
    values: valuesOf(brew),
    intervals: null,
  };
  return { figures, brew };
}

function brewOf({ recipe, ledger }: { readonly recipe: Recipe | null; readonly ledger: Ledger | null }) {
  return recipe === null || ledger === null ? null : { recipe, ledger };
}

export function toldWay({ kind, also, figure, times, distance, recipe }: WayOut): ToldWay {
  return { kind, also, figure, times, distance, intoFermenter: recipe.intoFermenter };
}

/** The row with its intervals, which take longer than the row itself. */
export function withIntervals(
  figures: KettleFigures,
  a: Pick<KettleTask, "content" | "kettle"> & { readonly recipe: Recipe | null },
): KettleFigures {
  if (a.recipe === null) return { ...figures, intervals: {} };
  const { content, kettle, recipe } = a;
  const known = intervals({ recipe, equipment: kettle.equipment, ambient: content.writtenOn.ambient });
  const shown = NUMBER_COLUMNS.flatMap(({ id }) => {
    const interval = id === "hops" ? undefined : known[id];
    return interval === undefined ? [] : [[id, interval] as const];
  });
  return { ...figures, intervals: Object.fromEntries(shown) };
}

/** A whole row at once. */
export function wholeRow(task: KettleTask): KettleFigures {
  const { figures, brew } = kettleFigures(task);
  return withIntervals(figures, { ...task, recipe: brew?.recipe ?? null });
}

function valuesOf(brew: ShownBrew | null): KettleFigures["values"] {
  const value = (id: NumberColumn): number | null => {
    if (brew === null) return null;
    if (id !== "hops") return brew.ledger.quantities[id];
    return brew.recipe.hops.reduce((sum, hop) => sum + hop.grams, 0);
  };
  // The columns name every key of the record.
  return Object.fromEntries(NUMBER_COLUMNS.map(({ id }) => [id, value(id)])) as Record<NumberColumn, number | null>;
}
