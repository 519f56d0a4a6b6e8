import "server-only";
import { storedCredits, withCredit } from "@/lib/model/lineage";
import type { CopyOfPublication } from "@/lib/model/publication";
import { recipeContent } from "@/lib/model/recipe-content";
import { AppError } from "../app-error";
import { readPublic } from "../db";
import { storedLeftover, type KeptLeftover } from "../exchange/kept-leftover";
import { keepCopy } from "../recipes/copy";
import type { Member } from "../session";

/** Copies what everybody may read into a space of the reader. */
export async function copyPublished(target: Member, copy: CopyOfPublication): Promise<{ readonly id: string }> {
  const row = await readPublic(
    (tx) => tx.publicRecipe.findUnique({ where: { address: copy.address, withdrawnAt: null } }),
    "all",
  );
  if (row === null) throw new AppError("NOT_FOUND", "Nothing is published at this address now.");
  const original = {
    spaceId: row.sourceSpaceId,
    recipeId: row.recipeId,
    rev: row.rev,
    rootId: row.recipeRoot,
    hash: row.contentHash,
    content: recipeContent.parse(row.content),
    leftover: publishedLeftover(row),
    credits: withCredit(storedCredits.parse(row.credits), { title: row.title, author: row.authorName }),
  };
  return keepCopy(target, original, copy);
}

function publishedLeftover(row: {
  readonly leftover: unknown;
  readonly leftoverFormat: string | null;
  readonly leftoverVersion: string | null;
}): KeptLeftover | null {
  const { leftover, leftoverFormat: format, leftoverVersion: version } = row;
  return format === null || version === null ? null : storedLeftover({ leftover, format, version });
}
