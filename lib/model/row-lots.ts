import type { Recipe } from "@/lib/calc/ledger";
import type { IngredientLot } from "./ingredient-lot";
import type { LotFigures } from "./lot";
import { isOfRow, ONE_PACK, rowNeeds, takeFromLots, type RowNeed } from "./lot-need";

/** A lot that a brewer may take for a row. */
export interface LotOffer {
  readonly lot: IngredientLot;
  /** null for a lot that was put away meanwhile. */
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
  /** That the wort needs, 10⁹; null where nobody knows. */
  readonly cells: number | null;
  readonly choice: Readonly<Record<string, string>>;
  readonly offers: readonly LotOffer[];
}): readonly RowLots[] {
  const { written, recipe, generic, choice, offers } = a;
  const yeast = offers.find(({ lot }) => lot.id === choice.yeast)?.figures;
  const cellsInPack = yeast?.kind === "yeast" ? yeast.figures.cells : null;
  const needs = rowNeeds(recipe, { cells: a.cells, cellsInPack });
  const onHand = new Map(offers.map(({ lot }) => [lot.id, lot.onHand]));
  const takes = new Map(takeFromLots(needs, choice, onHand).map((take) => [take.path, take]));
  const writtenNames = new Map(rowNeeds(written, ONE_PACK).map(({ path, name }) => [path, name]));
  const generics = new Map(
    generic === null ? [] : rowNeeds(generic, ONE_PACK).map(({ path, amount }) => [path, amount]),
  );
  return needs.map((need) => {
    const writtenName = writtenNames.get(need.path) ?? need.name;
    const ofKind = offers.filter(({ lot, figures }) => lot.what.kind === need.kind && figures !== null);
    const isMatching = ({ lot }: LotOffer): boolean => isOfRow({ kind: need.kind, name: writtenName }, lot.name);
    return {
      ...need,
      writtenName,
      generic: generics.get(need.path) ?? null,
      matching: ofKind.filter(isMatching),
      others: ofKind.filter((offer) => !isMatching(offer) && hasStock(offer)),
      chosen: ofKind.find(({ lot }) => lot.id === choice[need.path]) ?? null,
      short: takes.get(need.path)?.short ?? null,
    };
  });
}

/** Only malt and hops of another name stand in for a row: their usual figures say how they would. */
function hasStock({ figures }: LotOffer): boolean {
  return (figures?.kind === "fermentable" || figures?.kind === "hop") && figures.stock !== undefined;
}
