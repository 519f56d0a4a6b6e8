import { GENERIC_INGREDIENTS, type GenericIngredient } from "@/lib/model/generic-ingredients";
import type { ClubIngredient } from "@/lib/model/ingredient";
import { INGREDIENT_KINDS, type IngredientKind } from "@/lib/model/ingredient-kinds";
import type { IngredientLot } from "@/lib/model/ingredient-lot";
import { nameKey } from "@/lib/model/lot";
import type { IngredientSort, IngredientView } from "./ingredient-view";

/** One line of the table: an ingredient of the list, one of the club, or a lot. */
export type IngredientRow = Common &
  (
    | { readonly type: "generic"; readonly generic: GenericIngredient }
    | { readonly type: "club"; readonly own: ClubIngredient }
    | { readonly type: "lot"; readonly lot: IngredientLot }
  );

interface Common {
  readonly key: string;
  /** Under the ingredients of the space. */
  readonly path: string;
  readonly kind: IngredientKind;
  readonly name: string;
  readonly label: string;
  readonly whose: string;
  readonly isMine: boolean;
  readonly isArchived: boolean;
  readonly onHand: number | null;
  readonly bestBefore: string | null;
}

const NO_LOT = { isMine: false, onHand: null, bestBefore: null } as const;

/** Everything that the space knows, before anything is left out. */
export function allRows(a: {
  readonly own: readonly ClubIngredient[];
  readonly lots: readonly IngredientLot[];
  readonly userId: string;
}): readonly IngredientRow[] {
  const generic = GENERIC_INGREDIENTS.map((each): IngredientRow => {
    const { slug, name, what, group } = each;
    const common = { key: slug, path: slug, kind: what.kind, name, label: group, whose: "generic", isArchived: false };
    return { ...NO_LOT, ...common, type: "generic", generic: each };
  });
  const own = a.own.map((each): IngredientRow => {
    const { id, name, what, isArchived } = each;
    const common = { key: id, path: id, kind: what.kind, name, label: "", whose: "the club", isArchived };
    return { ...NO_LOT, ...common, type: "club", own: each };
  });
  const lots = a.lots.map((lot): IngredientRow => {
    const { id, owner, name, label, what, onHand, bestBefore, isArchived } = lot;
    const whose = owner?.name ?? "the club";
    const common = { key: id, path: `lots/${id}`, kind: what.kind, name, label, whose, isArchived };
    return { ...common, isMine: owner?.id === a.userId, onHand, bestBefore, type: "lot", lot };
  });
  return [...generic, ...own, ...lots];
}

/** The rows that a view asks for, in its order. */
export function shownRows(rows: readonly IngredientRow[], view: IngredientView): readonly IngredientRow[] {
  const words = nameKey(view.text).split(" ").filter(Boolean);
  const order = comparison(view.sort);
  return rows
    .filter((row) => row.isArchived === view.archived)
    .filter((row) => view.kind === null || row.kind === view.kind)
    .filter((row) => isWanted(row, view))
    .filter((row) => !view.onHandOnly || (row.onHand ?? 0) > 0)
    .filter((row) => words.every((word) => nameKey(`${row.name} ${row.label} ${row.whose}`).includes(word)))
    .sort((a, b) => (view.isDescending ? -order(a, b) : order(a, b)) || byName(a, b));
}

function isWanted(row: IngredientRow, { whose }: IngredientView): boolean {
  if (whose === "all") return true;
  if (whose === "mine") return row.isMine;
  if (whose === "generic") return row.type === "generic";
  return row.type === "club" || (row.type === "lot" && row.lot.owner === null);
}

type Compare = (a: IngredientRow, b: IngredientRow) => number;

const TYPES = ["generic", "club", "lot"];

/** An ingredient stands before its lots. */
const byName: Compare = (a, b) =>
  a.name.localeCompare(b.name, "en") ||
  INGREDIENT_KINDS.indexOf(a.kind) - INGREDIENT_KINDS.indexOf(b.kind) ||
  TYPES.indexOf(a.type) - TYPES.indexOf(b.type) ||
  a.label.localeCompare(b.label, "en") ||
  (a.key < b.key ? -1 : 1);

function comparison(sort: IngredientSort): Compare {
  switch (sort) {
    case "name":
      return (a, b) => a.name.localeCompare(b.name, "en");
    case "kind":
      return (a, b) => INGREDIENT_KINDS.indexOf(a.kind) - INGREDIENT_KINDS.indexOf(b.kind);
    case "whose":
      return (a, b) => a.whose.localeCompare(b.whose, "en");
    case "onHand":
      return (a, b) => (a.onHand ?? -1) - (b.onHand ?? -1);
    case "bestBefore":
      return (a, b) => (a.bestBefore ?? "9999").localeCompare(b.bestBefore ?? "9999");
  }
}
