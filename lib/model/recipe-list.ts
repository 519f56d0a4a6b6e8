import type { RecipeSummary } from "./recipe-content";

export const RECIPE_PAGE_SIZE = 50;

/** What a list of recipes can be sorted by, each with the direction that is asked for first. */
export const RECIPE_SORTS = { changed: "descending", title: "ascending", revision: "descending" } as const;
export type RecipeSort = keyof typeof RECIPE_SORTS;
export type SortDirection = "ascending" | "descending";

export interface RecipeOrder {
  readonly sort: RecipeSort;
  readonly direction: SortDirection;
  /** Counted from 1. */
  readonly page: number;
}

export interface RecipePage {
  readonly recipes: readonly RecipeSummary[];
  /** Recipes in all. */
  readonly total: number;
}

type Asked = Readonly<Record<string, string | string[] | undefined>>;

const MOST_PAGES = 20_000;

/** The order that an address asks for; what it does not say, or says wrongly, is as a list is first shown. */
export function recipeOrder(asked: Asked): RecipeOrder {
  const sort = SORTS.find((each) => each === asked.sort) ?? "changed";
  const page = Number(asked.page);
  return {
    sort,
    direction: DIRECTIONS.find((each) => each === asked.order) ?? RECIPE_SORTS[sort],
    page: Number.isInteger(page) && page >= 1 && page <= MOST_PAGES ? page : 1,
  };
}

// The keys of the table are the names of the sorts.
const SORTS = Object.keys(RECIPE_SORTS) as readonly RecipeSort[];
const DIRECTIONS: readonly SortDirection[] = ["ascending", "descending"];
