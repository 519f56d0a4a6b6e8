import { z } from "zod";
import { revisionNumber } from "./measured";
import { recordId, written } from "./written";

/** A recipe that another one goes back to, as it was called when it was copied, and whose it was. */
export interface Credit {
  readonly title: string;
  readonly author: string;
}

/** Longer chains keep their beginning and their end. */
export const MOST_CREDITS = 24;

/** What a copy goes back to: the credits of its original, and the original itself. */
export function withCredit(credits: readonly Credit[], original: Credit): readonly Credit[] {
  const chain = [...credits, original];
  return chain.length <= MOST_CREDITS ? chain : chain.toSpliced(MOST_CREDITS / 2, chain.length - MOST_CREDITS);
}

export const storedCredits: z.ZodType<readonly Credit[]> = z.array(z.object({ title: z.string(), author: z.string() }));

/** A copy of one revision. `id` is made by the page that asks, so that the same request twice makes one copy. */
export const newCopy = z.strictObject({
  id: recordId,
  recipeId: recordId,
  rev: revisionNumber,
  title: written("Title", 160),
});
export type NewCopy = z.output<typeof newCopy>;

/** Where a copy comes from, as far as one reader may know. */
export interface RecipeOrigin {
  /** The first ancestor first, the recipe that was copied last. */
  readonly credits: readonly Credit[];
  /** null where the reader does not belong to the space of the original. */
  readonly link: { readonly spaceSlug: string; readonly spaceName: string; readonly recipeId: string } | null;
  readonly rev: number | null;
}
