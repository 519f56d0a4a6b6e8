import type { Recipe } from "@/lib/calc/ledger";
import type { IngredientLot } from "./ingredient-lot";
import { nameKey, type LotFigures } from "./lot";
import { rowNeeds, takeFromLots, type RowNeed } from "./lot-need";

/** A lot that a brewer may take for a row. */
export interface LotOffer {
  readonly lot: IngredientLot;
  /** null for a lot that no row of a recipe is made of. */
  readonly figures: LotFigures | null;
}

/** One row of a sheet with what is on the shelf for it. */
export interface RowLots extends RowNeed {
  /** The ingredient as the recipe names it, which a lot of another one may stand in for. */
  readonly writtenName: string;
  /** What the row asks for by the recipe's own figures. */
  readonly generic: number | null;
  /** Lots of this ingredient, those of the brewer first. */
  readonly matching: readonly LotOffer[];
  /** Lots of other ingredients of the kind that could stand in for it. */
  readonly others: readonly LotOffer[];
  readonly chosen: LotOffer | null;
  /** What the chosen lot lacks of it; null without one. */
  readonly short: number | null;
}

/** Every row of a sheet, in the order of the recipe. */
export function rowsWithLots(a: {
  readonly written: Recipe;
  /** As solved with the chosen lots, and as solved with the recipe's own figures. */
  readonly recipe: Recipe;
  readonly generic: Recipe | null;
  readonly choice: Readonly<Record<string, string>>;
  readonly offers: readonly LotOffer[];
}): readonly RowLots[] {
  const { written, recipe, generic, choice, offers } = a;
  const needs = rowNeeds(recipe);
  const onHand = new Map(offers.map(({ lot }) => [lot.id, lot.onHand]));
  const takes = new Map(takeFromLots(needs, choice, onHand).map((take) => [take.path, take]));
  const writtenNames = new Map(rowNeeds(written).map(({ path, name }) => [path, name]));
  const generics = new Map(generic === null ? [] : rowNeeds(generic).map(({ path, amount }) => [path, amount]));
  return needs.map((need) => {
    const writtenName = writtenNames.get(need.path) ?? need.name;
    const ofKind = offers.filter(({ lot, figures }) => lot.what.kind === need.kind && figures !== null);
    const isMatching = ({ lot }: LotOffer): boolean => nameKey(lot.name) === nameKey(writtenName);
    return {
      ...need,
      writtenName,
      generic: generics.get(need.path) ?? null,
      matching: ofKind.filter(isMatching),
      others: ofKind.filter((offer) => !isMatching(offer) && offer.figures?.stock !== undefined),
      chosen: ofKind.find(({ lot }) => lot.id === choice[need.path]) ?? null,
      short: takes.get(need.path)?.short ?? null,
    };
  });
}
