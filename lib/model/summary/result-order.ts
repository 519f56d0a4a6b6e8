import type { AskedBrew } from "./answer";

export const RESULT_SORTS = ["name", "begun", "planned", "measured", "difference"] as const;
export type ResultSort = (typeof RESULT_SORTS)[number];

export interface ResultOrder {
  readonly sort: ResultSort;
  readonly direction: "ascending" | "descending";
}

const KEYS: Readonly<Record<ResultSort, (row: AskedBrew) => number | string>> = {
  name: ({ name }) => name,
  begun: ({ brew }) => brew.startedAt?.getTime() ?? Number.MAX_SAFE_INTEGER,
  planned: ({ figure }) => figure.planned,
  measured: ({ figure }) => figure.measured ?? Number.NEGATIVE_INFINITY,
  difference: ({ figure }) => (figure.measured ?? Number.NEGATIVE_INFINITY) - figure.planned,
};

/** The order of an address; the first in the list is the usual one. */
export function orderOf(asked: { readonly sort?: unknown; readonly direction?: unknown }): ResultOrder {
  const sort = RESULT_SORTS.find((each) => each === asked.sort) ?? "measured";
  return { sort, direction: asked.direction === "ascending" ? "ascending" : "descending" };
}

export function inOrder(rows: readonly AskedBrew[], { sort, direction }: ResultOrder): readonly AskedBrew[] {
  const sign = direction === "ascending" ? 1 : -1;
  return [...rows].sort((a, b) => sign * compare(KEYS[sort](a), KEYS[sort](b)) || (a.brew.id < b.brew.id ? -1 : 1));
}

function compare(a: number | string, b: number | string): number {
  if (typeof a === "string" && typeof b === "string") return a.localeCompare(b, "en-GB");
  return Number(a) - Number(b) || 0;
}
