import type { QuantityId } from "@/lib/calc/ledger";
import type { VolumeHeld } from "@/lib/model/recipe-intention";

/** Columns of numbers, by the ledger quantity that they show. */
export const NUMBER_COLUMNS = [
  { id: "fermenter.volume", label: "Volume" },
  { id: "fermenter.originalExtract", label: "Strength" },
  { id: "mash.grist", label: "Grist" },
  { id: "water.total", label: "Water" },
  { id: "hops", label: "Hops" },
  { id: "fermenter.efficiency", label: "Efficiency" },
  { id: "kettle.heatingTime", label: "To the boil" },
  { id: "day.time", label: "Brew day" },
  { id: "day.energy", label: "Energy" },
] as const satisfies readonly { readonly id: QuantityId | "hops"; readonly label: string }[];

export type NumberColumn = (typeof NUMBER_COLUMNS)[number]["id"];
export type SortColumn = "kettle" | "brewer" | "fit" | NumberColumn;
const SORT_COLUMNS: readonly SortColumn[] = ["kettle", "brewer", "fit", ...NUMBER_COLUMNS.map(({ id }) => id)];

export type Query = Readonly<Record<string, string | readonly string[] | undefined>>;

/** What the address of the page asks for. */
export interface KettleView {
  /** null shows the newest revision. */
  readonly rev: number | null;
  readonly sort: SortColumn;
  readonly isDescending: boolean;
  readonly fit: "all" | "fits" | "not";
  readonly brewer: string | null;
  readonly volume: VolumeHeld;
}

/** Reads the address; what it does not understand it leaves out. */
export function readView(query: Query): KettleView {
  const text = (name: string): string => {
    const value = query[name];
    return typeof value === "string" ? value : "";
  };
  const fit = text("fit");
  const brewer = text("brewer");
  const rev = Number(text("rev"));
  return {
    rev: Number.isInteger(rev) && rev > 0 ? rev : null,
    sort: SORT_COLUMNS.find((column) => column === text("sort")) ?? "kettle",
    isDescending: text("order") === "down",
    fit: fit === "fits" || fit === "not" ? fit : "all",
    brewer: brewer === "" ? null : brewer,
    volume: text("volume") === "written" ? "written" : "usual",
  };
}

/** The query of a view, beginning with "?"; what is usual is left out. */
export function viewQuery(view: KettleView): string {
  const query = new URLSearchParams();
  if (view.rev !== null) query.set("rev", String(view.rev));
  if (view.volume === "written") query.set("volume", "written");
  if (view.fit !== "all") query.set("fit", view.fit);
  if (view.brewer !== null) query.set("brewer", view.brewer);
  if (view.sort !== "kettle") query.set("sort", view.sort);
  if (view.isDescending) query.set("order", "down");
  const text = query.toString();
  return text === "" ? "" : `?${text}`;
}
