import { LIMIT_IDS, type LimitId } from "@/lib/calc/ledger";
import type { AdaptationChoice } from "@/lib/model/adaptation";
import { NO_CHOICE } from "@/lib/model/adaptation";
import { NUMBER_COLUMNS, type NumberColumn } from "./kettle-columns";

export type SortColumn = "kettle" | "brewer" | "fit" | NumberColumn;
const SORT_COLUMNS: readonly SortColumn[] = ["kettle", "brewer", "fit", ...NUMBER_COLUMNS.map(({ id }) => id)];

const FITS = ["all", "fits", "way", "not", "none"] as const;
/** Which kettles are shown: those it fits as intended, fits by a way out, does not fit, or members without one. */
export type FitFilter = (typeof FITS)[number];

/** Which volume is asked for: what each brewer chose, or the same rule for everybody. */
export type VolumeView = "chosen" | "usual" | "written";

export type Query = Readonly<Record<string, string | readonly string[] | undefined>>;

/** What the address of the page asks for. */
export interface KettleView {
  /** null shows the newest revision. */
  readonly rev: number | null;
  readonly sort: SortColumn;
  readonly isDescending: boolean;
  readonly fit: FitFilter;
  /** Only kettles that break this limit as intended. */
  readonly why: LimitId | null;
  /** Part of the name of a kettle or a brewer. */
  readonly text: string;
  readonly volume: VolumeView;
  /** All rows at once, however many. */
  readonly isPlain: boolean;
}

const LONGEST_TEXT = 80;

/** Reads the address; what it does not understand it leaves out. */
export function readView(query: Query): KettleView {
  const text = (name: string): string => {
    const value = query[name];
    return typeof value === "string" ? value : "";
  };
  const rev = Number(text("rev"));
  const volume = text("volume");
  return {
    rev: Number.isInteger(rev) && rev > 0 ? rev : null,
    sort: SORT_COLUMNS.find((column) => column === text("sort")) ?? "kettle",
    isDescending: text("order") === "down",
    fit: FITS.find((fit) => fit === text("fit")) ?? "all",
    why: LIMIT_IDS.find((limit) => limit === text("why")) ?? null,
    text: text("name").trim().slice(0, LONGEST_TEXT),
    volume: volume === "written" || volume === "usual" ? volume : "chosen",
    isPlain: text("table") === "plain",
  };
}

/** The query of a view, beginning with "?"; what is usual is left out. */
export function viewQuery(view: KettleView): string {
  const query = new URLSearchParams();
  if (view.rev !== null) query.set("rev", String(view.rev));
  if (view.volume !== "chosen") query.set("volume", view.volume);
  if (view.text !== "") query.set("name", view.text);
  if (view.fit !== "all") query.set("fit", view.fit);
  if (view.why !== null) query.set("why", view.why);
  if (view.sort !== "kettle") query.set("sort", view.sort);
  if (view.isDescending) query.set("order", "down");
  if (view.isPlain) query.set("table", "plain");
  const text = query.toString();
  return text === "" ? "" : `?${text}`;
}

/** The query of a kettle's own sheet: which revision and volume, and nothing of the table. */
export function sheetQuery({ rev, volume }: Pick<KettleView, "rev" | "volume">): string {
  return viewQuery({ ...EVERYTHING, rev, volume });
}

const EVERYTHING = {
  sort: "kettle",
  isDescending: false,
  fit: "all",
  why: null,
  text: "",
  isPlain: false,
} as const satisfies Omit<KettleView, "rev" | "volume">;

/** What a kettle is brewed by in a view. A way out holds for the volume that it was chosen with. */
export function choiceInView(kept: AdaptationChoice | null, volume: VolumeView): AdaptationChoice {
  const chosen = kept ?? NO_CHOICE;
  if (volume === "chosen" || volume === chosen.volume) return chosen;
  return { ...chosen, volume, way: null };
}
