import type { Dimension } from "@/lib/calc/ledger";

/** One number or word of a recipe that is not the same before and after. */
export interface RecipeChange {
  readonly key: string;
  readonly group: "Fermentables" | "Hops" | "Mash steps" | "Settings" | "Water";
  /** The ingredient, or the setting itself. */
  readonly what: string;
  /** Which of its numbers; empty for a setting, which has one. */
  readonly field: string;
  readonly kind: "added" | "removed" | "changed";
  /** null for words, and for numbers that everybody reads in the library's own unit. */
  readonly dimension: Dimension | null;
  readonly unit: string;
  readonly before: number | string | null;
  readonly after: number | string | null;
}
