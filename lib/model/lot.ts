import { z } from "zod";
import type { FermentableStock, HopStock } from "@/lib/calc/adapt";
import { measuredBy } from "./measured";
import { FERMENTABLE_FIELDS, HOP_FIELDS } from "./recipe-fields";

/** What the analysis of one lot says; null where it says nothing, and the recipe's own figure stays. */
export const fermentableLotFigures = z.strictObject({
  extract: measuredBy(FERMENTABLE_FIELDS.extract).nullable(),
  moisture: measuredBy(FERMENTABLE_FIELDS.moisture).nullable(),
  colour: measuredBy(FERMENTABLE_FIELDS.colour).nullable(),
});
export type FermentableLotFigures = z.output<typeof fermentableLotFigures>;

export const hopLotFigures = z.strictObject({ alpha: measuredBy(HOP_FIELDS.alpha).nullable() });
export type HopLotFigures = z.output<typeof hopLotFigures>;

/** A lot as far as it changes a recipe. `stock` is the ingredient that it is of, where its usual figures are known. */
export type LotFigures =
  | { readonly kind: "fermentable"; readonly figures: FermentableLotFigures; readonly stock?: FermentableStock }
  | { readonly kind: "hop"; readonly figures: HopLotFigures; readonly stock?: HopStock };

type LotOf<K extends LotFigures["kind"]> = Extract<LotFigures, { readonly kind: K }>;

/** A fermentable as this lot is. A lot of another ingredient stands in for it: its row becomes that ingredient. */
export function fermentableOfLot<F extends FermentableStock>(row: F, { figures, stock }: LotOf<"fermentable">): F {
  const base = stock === undefined || isSameName(stock.name, row.name) ? row : { ...row, ...stock };
  const { extract, moisture, colour } = figures;
  return {
    ...base,
    extract: extract ?? base.extract,
    moisture: moisture ?? base.moisture,
    colour: colour ?? base.colour,
  };
}

/** A hop as this lot is, likewise. */
export function hopOfLot<H extends HopStock>(row: H, { figures, stock }: LotOf<"hop">): H {
  const base = stock === undefined || isSameName(stock.name, row.name) ? row : { ...row, ...stock };
  return { ...base, alpha: figures.alpha ?? base.alpha };
}

/** Two names are of one ingredient whatever their letters and blanks. */
export function nameKey(name: string): string {
  return name.trim().replaceAll(/\s+/g, " ").toLowerCase();
}

function isSameName(one: string, other: string): boolean {
  return nameKey(one) === nameKey(other);
}
