/** What an import has made. */
export interface Imported {
  readonly importId: string;
  readonly recipes: readonly { readonly id: string; readonly title: string }[];
}
