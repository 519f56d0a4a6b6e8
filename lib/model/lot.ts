import { z } from "zod";
import type { FermentableStock, HopStock } from "@/lib/calc/adapt";
import type { AcidSolution } from "@/lib/calc/water";
import type { BillionCells, Fraction, KilogramsPerLitre } from "@/lib/calc/units";
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

/** Living cells of a pack today, as far as they are known; as counted when packed where its age is not. */
interface YeastLotFigures {
  readonly cells: BillionCells | null;
}

/** Strength of a bottle of acid; null where its label says nothing. */
interface AcidLotFigures {
  readonly massFraction: Fraction | null;
  readonly density: KilogramsPerLitre | null;
}

/** A lot as far as it changes a recipe, or how much of it is taken. `stock` is the ingredient that it is of, where its usual figures are known. */
export type LotFigures =
  | { readonly kind: "fermentable"; readonly figures: FermentableLotFigures; readonly stock?: FermentableStock }
  | { readonly kind: "hop"; readonly figures: HopLotFigures; readonly stock?: HopStock }
  | { readonly kind: "yeast"; readonly figures: YeastLotFigures }
  | { readonly kind: "salt"; readonly figures: object }
  | { readonly kind: "acid"; readonly figures: AcidLotFigures };

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

/** An acid as strong as this lot; by the recipe's own figures where the lot does not say both. */
export function acidOfLot(solution: AcidSolution, { figures: { massFraction, density } }: LotOf<"acid">): AcidSolution {
  return massFraction === null || density === null ? solution : { ...solution, massFraction, density };
}

/** Two names are of one ingredient whatever their letters and blanks. */
export function nameKey(name: string): string {
  return name.trim().replaceAll(/\s+/g, " ").toLowerCase();
}

function isSameName(one: string, other: string): boolean {
  return nameKey(one) === nameKey(other);
}
