import { z } from "zod";
import type { Credit } from "./lineage";
import { revisionNumber } from "./measured";
import type { RecipeContent } from "./recipe-content";
import { recordId, written } from "./written";

/** The last part of a public address. */
const address = z.string().regex(/^[a-z0-9-]{8,80}$/, "This is not a public address");

/** An order to show one revision to everybody. A box that is not ticked sends nothing. */
export const newPublication = z.strictObject({
  recipeId: recordId,
  rev: revisionNumber,
  named: z
    .literal("yes", { error: "The box for the name is ticked or not" })
    .optional()
    .transform((ticked) => ticked === "yes"),
});
export type NewPublication = z.output<typeof newPublication>;

export const withdrawal = z.strictObject({ address });

export const copyOfPublication = z.strictObject({
  id: recordId,
  address,
  title: written("Title", 160),
});
export type CopyOfPublication = z.output<typeof copyOfPublication>;

export function isPublicAddress(text: string): boolean {
  return address.safeParse(text).success;
}

/** What everybody sees of a published recipe; no id, and no name that its owner did not put there. */
export interface PublishedRecipe {
  readonly address: string;
  readonly title: string;
  readonly rev: number;
  readonly authorName: string;
  readonly credits: readonly Credit[];
  readonly content: RecipeContent;
  readonly publishedAt: Date;
  /** A later revision that is published too. */
  readonly newerAddress: string | null;
}

/** A revision that is, or was, public; for its own club. */
export interface PublicationSummary {
  readonly rev: number;
  readonly address: string;
  readonly authorName: string;
  readonly publishedAt: Date;
  readonly withdrawnAt: Date | null;
}
