import "server-only";
import { withoutNames } from "@/lib/model/exchange/leftover";
import { storedCredits, type Credit } from "@/lib/model/lineage";
import type { NewPublication } from "@/lib/model/publication";
import { recipeContent, type RecipeContent } from "@/lib/model/recipe-content";
import { AppError } from "../app-error";
import { writeAudit } from "../audit";
import { directory, inSpace, JSON_NULL, type SpaceTransaction } from "../db";
import { leftoverAt } from "../exchange/kept-leftover";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { addressFor } from "./address";

/**
 * Shows a revision to everybody. An organiser decides it; the name of the author stands there only by the author's own
 * act. Published again, it is found where it was.
 */
export async function publishRecipe(member: Member, order: NewPublication): Promise<{ readonly address: string }> {
  requireAbility(member, "organise");
  const { spaceId, userId } = member;
  const address = await inSpace(spaceId, userId, (tx) => insertPublication(tx, member, order));
  await writeAudit(directory, { action: "publish", outcome: "ok", actor: userId, spaceId, target: address });
  return { address };
}

async function insertPublication(tx: SpaceTransaction, member: Member, order: NewPublication): Promise<string> {
  const { spaceId, userId } = member;
  const { recipeId, rev } = order;
  const revision = await tx.recipeRevision.findUnique({
    where: { spaceId_recipeId_rev: { spaceId, recipeId, rev }, recipe: { archivedAt: null } },
    select: {
      content: true,
      contentHash: true,
      authorId: true,
      recipe: { select: { title: true, rootId: true, credits: true } },
    },
  });
  if (revision === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
  const kept = await leftoverAt(tx, { spaceId, recipeId, rev });
  const leftover = kept === null ? null : JSON.stringify(withoutNames(kept.entries));
  if (order.named && revision.authorId !== userId) {
    throw new AppError("FORBIDDEN", "Only the author of a revision puts their own name on a public page.");
  }
  const { title, rootId, credits } = revision.recipe;
  const content = JSON.stringify(withoutKettleName(recipeContent.parse(revision.content)));
  const author = order.named ? member.displayName : unnamed(member);
  const unnamedCredits = JSON.stringify(storedCredits.parse(credits).map(withoutName));
  const [row] = await tx.$queryRaw<readonly { readonly address: string }[]>`
    INSERT INTO public_recipe AS p (recipe_root, recipe_id, rev, source_space_id, title, author_name, content,
                                    content_hash, address, published_by, credits,
                                    leftover, leftover_format, leftover_version)
    VALUES (${rootId}::uuid, ${recipeId}::uuid, ${rev}::int, ${spaceId}::uuid, ${title}, ${author}, ${content}::jsonb,
            ${revision.contentHash}, ${addressFor(title)}, ${userId}::uuid, ${unnamedCredits}::jsonb,
            ${leftover}::jsonb, ${kept?.format ?? null}, ${kept?.version ?? null})
    ON CONFLICT (recipe_root, source_space_id, recipe_id, rev) DO UPDATE SET
      title = EXCLUDED.title, author_name = EXCLUDED.author_name, content = EXCLUDED.content,
      published_by = EXCLUDED.published_by, credits = EXCLUDED.credits, withdrawn_at = NULL,
      leftover = EXCLUDED.leftover, leftover_format = EXCLUDED.leftover_format,
      leftover_version = EXCLUDED.leftover_version,
      published_at = CASE WHEN p.withdrawn_at IS NULL THEN p.published_at ELSE now() END
    RETURNING p.address`;
  if (row === undefined) throw new Error("a publication was written and gave no address");
  return row.address;
}

function unnamed({ spaceKind, spaceName }: Member): string {
  return spaceKind === "club" ? `a member of ${spaceName}` : "a home brewer";
}

/** Whoever is credited did not ask to be named to everybody. */
function withoutName({ title }: Credit): Credit {
  return { title, author: "somebody who is not named here" };
}

const PUBLIC_KETTLE = "the kettle that it was written on";

/** People call kettles after themselves. */
function withoutKettleName(content: RecipeContent): RecipeContent {
  const { writtenOn } = content;
  const equipment = { ...writtenOn.equipment, name: PUBLIC_KETTLE };
  return { ...content, writtenOn: { ...writtenOn, name: PUBLIC_KETTLE, equipment } };
}

/** Takes a published text back. Its address says so from then on, and leads nowhere else. */
export async function withdrawRecipe(member: Member, address: string): Promise<void> {
  requireAbility(member, "organise");
  const { spaceId, userId } = member;
  const { count } = await inSpace(spaceId, userId, (tx) =>
    tx.publicRecipe.updateMany({
      where: { address, sourceSpaceId: spaceId, withdrawnAt: null },
      data: {
        withdrawnAt: new Date(),
        content: {},
        credits: [],
        authorName: "",
        leftover: JSON_NULL,
        leftoverFormat: null,
        leftoverVersion: null,
      },
    }),
  );
  if (count === 0) throw new AppError("NOT_FOUND", "Nothing of this club is published at this address now.");
  await writeAudit(directory, { action: "withdraw", outcome: "ok", actor: userId, spaceId, target: address });
}
