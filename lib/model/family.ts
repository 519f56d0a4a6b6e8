/** One recipe of a family, as far as one reader may know. */
export interface Relative {
  /** Tells relatives apart within one family. */
  readonly key: string;
  /** null for a recipe of a space that the reader does not belong to: it is there, and nothing more is said. */
  readonly shown: ShownRelative | null;
  /** The revision of its original that it was copied of; null for the first ancestor, or where that is not shown. */
  readonly ofRev: number | null;
  readonly copies: readonly Relative[];
  /** Copies in spaces that the reader does not belong to, and which lead to none that they see. */
  readonly hiddenCopies: number;
}

export interface ShownRelative {
  readonly spaceSlug: string;
  readonly spaceName: string;
  readonly recipeId: string;
  readonly title: string;
  readonly headRev: number;
  readonly authorName: string;
}

/** A recipe with all that came of the same first ancestor. */
export interface Family {
  readonly root: Relative;
  /** Recipes in all, seen or not. */
  readonly size: number;
  readonly hidden: number;
}
