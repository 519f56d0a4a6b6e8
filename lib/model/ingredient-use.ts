/** Where the recipes and brews of a space name an ingredient. */
export interface IngredientUse {
  readonly recipes: readonly { readonly id: string; readonly title: string; readonly rev: number }[];
  readonly brews: readonly { readonly id: string; readonly title: string; readonly state: string }[];
}
