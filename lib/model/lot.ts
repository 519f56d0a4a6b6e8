import { z } from "zod";
import type { Fermentable, HopAddition } from "@/lib/calc/ledger";
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

/** A lot as far as it changes a recipe. */
export type LotFigures =
  | { readonly kind: "fermentable"; readonly figures: FermentableLotFigures }
  | { readonly kind: "hop"; readonly figures: HopLotFigures };

type Analysed = Pick<Fermentable, "extract" | "moisture" | "colour">;

/** A fermentable as this lot is. */
export function fermentableOfLot<F extends Analysed>(row: F, { extract, moisture, colour }: FermentableLotFigures): F {
  return { ...row, extract: extract ?? row.extract, moisture: moisture ?? row.moisture, colour: colour ?? row.colour };
}

/** A hop as this lot is. */
export function hopOfLot<H extends Pick<HopAddition, "alpha">>(row: H, { alpha }: HopLotFigures): H {
  return { ...row, alpha: alpha ?? row.alpha };
}
