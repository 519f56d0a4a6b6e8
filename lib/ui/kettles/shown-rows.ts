import type { KettleEntry } from "@/lib/model/kettle-entry";
import type { NumberColumn } from "./kettle-columns";
import type { KettleFigures } from "./kettle-figures";
import type { KettleView, SortColumn } from "./kettle-view";

/** A line of the table; null figures are still being computed, or there is no kettle to compute. */
export interface KettleRow {
  readonly entry: KettleEntry;
  readonly figures: KettleFigures | null;
}

const NAMES = new Intl.Collator("en", { sensitivity: "base", numeric: true });

/** Entries by kettle or by brewer, members without a kettle after the kettles; the order that needs no computing. */
export function inNameOrder(
  entries: readonly KettleEntry[],
  { sort, isDescending }: Pick<KettleView, "sort" | "isDescending">,
): readonly KettleEntry[] {
  const sign = isDescending && !isComputed(sort) ? -1 : 1;
  const byBrewer = sort === "brewer";
  const names = (entry: KettleEntry): readonly [string, string] => {
    const kettle = entry.kettleName ?? "";
    return byBrewer ? [entry.ownerName, kettle] : [kettle, entry.ownerName];
  };
  return entries.toSorted((one, other) => {
    if (!byBrewer && (one.kettleName === null) !== (other.kettleName === null)) return one.kettleName === null ? 1 : -1;
    const [a, b] = names(one);
    const [c, d] = names(other);
    return sign * (NAMES.compare(a, c) || NAMES.compare(b, d)) || (one.key < other.key ? -1 : 1);
  });
}

/** Whether an order waits for the figures of every kettle. */
export function isComputed(sort: SortColumn): boolean {
  return sort !== "kettle" && sort !== "brewer";
}

/** Entries that a text and the choice of members without a kettle leave, before anything is computed. */
export function named(
  entries: readonly KettleEntry[],
  { text, fit }: Pick<KettleView, "text" | "fit">,
): readonly KettleEntry[] {
  const wanted = text.toLocaleLowerCase("en");
  return entries.filter(({ kettleName, ownerName }) => {
    if (fit === "none" && kettleName !== null) return false;
    return wanted === "" || `${kettleName ?? ""}\n${ownerName}`.toLocaleLowerCase("en").includes(wanted);
  });
}

/**
 * The rows that a view shows, of entries in the order of names. An order by figures waits until all of them are there, so
 * that no row jumps while somebody reads it.
 */
export function shownRows(a: {
  readonly ordered: readonly KettleEntry[];
  readonly figures: ReadonlyMap<string, KettleFigures>;
  readonly view: KettleView;
  readonly isComplete: boolean;
}): readonly KettleRow[] {
  const { figures, view, isComplete } = a;
  const rows = named(a.ordered, view)
    .map((entry) => ({ entry, figures: figures.get(entry.key) ?? null }))
    .filter((row) => isWanted(row, view));
  if (!isComputed(view.sort) || !isComplete) return rows;
  return rows.toSorted(byFigures(view));
}

/** What is not computed yet cannot be told to fit or not, so it waits outside a filter that asks. */
function isWanted({ figures }: KettleRow, { fit, why }: KettleView): boolean {
  if (why !== null && figures?.reasons.some(({ id }) => id === why) !== true) return false;
  if (fit === "all" || fit === "none") return true;
  return figures?.fit === fit;
}

/** Rows without a value stay at the end, whichever way the others go. */
function byFigures({ sort, isDescending }: KettleView): (one: KettleRow, other: KettleRow) => number {
  const sign = isDescending ? -1 : 1;
  return (one, other) => {
    const [a, b] = [valueOf(one, sort), valueOf(other, sort)];
    if (a === null || b === null) return Number(a === null) - Number(b === null);
    return sign * (a - b);
  };
}

const FIT_ORDER = { fits: 0, way: 1, not: 2 } as const;

function valueOf({ figures }: KettleRow, sort: SortColumn): number | null {
  if (figures === null) return null;
  if (sort === "fit") return FIT_ORDER[figures.fit] * 100 + figures.reasons.length;
  return figures.values[sort as NumberColumn];
}
