export const INGREDIENT_KINDS = ["fermentable", "hop", "yeast", "salt", "acid"] as const;
export type IngredientKind = (typeof INGREDIENT_KINDS)[number];
