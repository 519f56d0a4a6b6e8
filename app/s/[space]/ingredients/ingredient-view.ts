import { INGREDIENT_KINDS, type IngredientKind } from "@/lib/model/ingredient-kinds";

export const WHOSE = ["all", "generic", "club", "mine"] as const;
export type Whose = (typeof WHOSE)[number];

export const SORTS = ["name", "kind", "whose", "onHand", "bestBefore"] as const;
export type IngredientSort = (typeof SORTS)[number];

export type Query = Readonly<Record<string, string | readonly string[] | undefined>>;

/** What the address of the table asks for. */
export interface IngredientView {
  readonly kind: IngredientKind | null;
  readonly text: string;
  readonly whose: Whose;
  readonly onHandOnly: boolean;
  readonly archived: boolean;
  readonly sort: IngredientSort;
  readonly isDescending: boolean;
  /** Every row; otherwise the first ones. */
  readonly isWhole: boolean;
}

const LONGEST_TEXT = 80;

/** Reads the address; what it does not understand it leaves out. */
export function readView(query: Query): IngredientView {
  const text = (name: string): string => {
    const value = query[name];
    return typeof value === "string" ? value : "";
  };
  return {
    kind: INGREDIENT_KINDS.find((kind) => kind === text("kind")) ?? null,
    text: text("text").trim().slice(0, LONGEST_TEXT),
    whose: WHOSE.find((whose) => whose === text("whose")) ?? "all",
    onHandOnly: text("onHand") === "yes",
    archived: text("archived") === "yes",
    sort: SORTS.find((sort) => sort === text("sort")) ?? "name",
    isDescending: text("order") === "down",
    isWhole: text("rows") === "all",
  };
}

/** The query of a view, beginning with "?"; what is usual is left out. */
export function viewQuery(view: IngredientView): string {
  const query = new URLSearchParams();
  if (view.kind !== null) query.set("kind", view.kind);
  if (view.text !== "") query.set("text", view.text);
  if (view.whose !== "all") query.set("whose", view.whose);
  if (view.onHandOnly) query.set("onHand", "yes");
  if (view.archived) query.set("archived", "yes");
  if (view.sort !== "name") query.set("sort", view.sort);
  if (view.isDescending) query.set("order", "down");
  if (view.isWhole) query.set("rows", "all");
  const text = query.toString();
  return text === "" ? "" : `?${text}`;
}
