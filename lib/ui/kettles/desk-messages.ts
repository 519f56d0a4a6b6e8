import type { ExplainedNumber } from "@/lib/calc/explain";
import type { Interval, Limit, QuantityId } from "@/lib/calc/ledger";
import type { AdaptationChoice } from "@/lib/model/adaptation";
import type { RecipeContent } from "@/lib/model/recipe-content";
import type { KettleFigures, ToldWay } from "./kettle-figures";
import type { VolumeView } from "./kettle-view";

/** A number of the table that somebody wants explained: a column of it, or what an explanation leads on to. */
export type ExplainableNumber = QuantityId | "hops";

export interface ExplainedCell {
  readonly explanation: ExplainedNumber;
  readonly interval: Interval | null;
}

/** Whether and why a recipe fits one kettle, and what would make it fit. */
export interface FitDetail {
  /** All limits, kept or not, of the brew as intended; empty where no grist reaches the strength. */
  readonly limits: readonly Limit[];
  readonly fits: boolean;
  /** The nearest to the intention first. */
  readonly ways: readonly ToldWay[];
}

/** What the page asks of the desk that computes. `run` counts what was asked anew, so that late answers are known. */
export type ToDesk =
  | {
      readonly kind: "open";
      readonly run: number;
      readonly content: RecipeContent;
      readonly volume: VolumeView;
      readonly kept: readonly (readonly [id: string, choice: AdaptationChoice])[];
      /** Rows that are computed already. */
      readonly done: readonly string[];
    }
  /** Kettles as they came over the wire, a line of JSON each. */
  | { readonly kind: "kettles"; readonly lines: readonly string[] }
  /** The rows in view, which go first. */
  | { readonly kind: "look"; readonly ids: readonly string[] }
  | { readonly kind: "volume"; readonly run: number; readonly volume: VolumeView }
  | { readonly kind: "keep"; readonly id: string; readonly choice: AdaptationChoice }
  | { readonly kind: "explain"; readonly request: number; readonly id: string; readonly number: ExplainableNumber }
  | { readonly kind: "detail"; readonly request: number; readonly id: string };

export type FromDesk =
  | {
      readonly kind: "figures";
      readonly run: number;
      readonly rows: readonly (readonly [id: string, figures: KettleFigures])[];
    }
  | { readonly kind: "explained"; readonly request: number; readonly cell: ExplainedCell | null }
  | { readonly kind: "detail"; readonly request: number; readonly detail: FitDetail | null };
