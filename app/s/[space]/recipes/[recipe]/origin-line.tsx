import Link from "next/link";
import type { RecipeOrigin } from "@/lib/model/lineage";

/** Whom a copy is owed to: the recipe that it was made of first, then those before it. */
export function OriginLine({ origin }: { readonly origin: RecipeOrigin }) {
  const { credits, link, rev } = origin;
  const [nearest, ...before] = credits.toReversed();
  if (nearest === undefined) return null;
  return (
    <p className="mb-4">
      After{" "}
      {link === null || rev === null ? (
        `“${nearest.title}”`
      ) : (
        <Link href={`/s/${link.spaceSlug}/recipes/${link.recipeId}/revisions/${rev}`}>
          “{nearest.title}”, revision {rev}, in {link.spaceName}
        </Link>
      )}{" "}
      by {nearest.author}
      {before.map(({ title, author }) => `, after “${title}” by ${author}`).join("")}
    </p>
  );
}
