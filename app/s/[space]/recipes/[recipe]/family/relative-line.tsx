import Link from "next/link";
import type { ShownRelative } from "@/lib/model/family";

interface RelativeLineProps {
  readonly shown: ShownRelative | null;
  readonly ofRev: number | null;
  readonly parent: ShownRelative | null;
  readonly own: Pick<ShownRelative, "spaceSlug" | "recipeId">;
}

/** One recipe of a family: whose it is, where, of which revision, and what was changed since. */
export function RelativeLine({ shown, ofRev, parent, own }: RelativeLineProps) {
  if (shown === null) return <span className="text-muted">A recipe in a club or on a bench that is not yours</span>;
  const { spaceSlug, spaceName, recipeId, title, headRev, authorName } = shown;
  const isOwn = spaceSlug === own.spaceSlug && recipeId === own.recipeId;
  const home = `/s/${spaceSlug}/recipes/${recipeId}`;
  const of = parent === null || ofRev === null ? null : `${parent.spaceSlug}:${parent.recipeId}:${ofRev}`;
  return (
    <span className="flex flex-wrap items-center gap-x-4">
      <Link href={home} className="target font-semibold" aria-current={isOwn ? "page" : undefined}>
        {title}
      </Link>
      <span className="text-sm text-muted">
        {spaceName}, {headRev === 1 ? "revision 1" : `revisions 1 to ${headRev}`}, the last by {authorName}
        {ofRev === null ? "" : `; copied of revision ${ofRev}`}
        {isOwn ? "; this recipe" : ""}
      </span>
      {of === null ? null : (
        <Link href={`${home}/compare?from=${of}&to=${headRev}`} className="target">
          What changed<span className="sr-only"> in {title} since it was copied</span>
        </Link>
      )}
    </span>
  );
}
