import Link from "next/link";
import type { DraftSummary } from "@/lib/model/recipe-draft";
import { ClockTime } from "@/lib/ui/brew/clock-time";

/** What is being written and not published: one's own drafts to go on with, and those of others on a recipe. */
export function OpenDrafts({ home, drafts }: { readonly home: string; readonly drafts: readonly DraftSummary[] }) {
  if (drafts.length === 0) return null;
  return (
    <section aria-labelledby="drafts-heading" className="mb-6">
      <h2 id="drafts-heading" className="text-base">
        Open drafts
      </h2>
      <ul>
        {drafts.map(({ id, recipeId, title, writerName, isOwn, begunAt, savedAt }) => (
          <li key={`${writerName} ${id}`}>
            <Link
              href={recipeId === null ? `${home}/recipes/new?draft=${id}` : `${home}/recipes/${recipeId}`}
              className="target"
            >
              Draft: {title === "" ? "a recipe without a title" : title}
            </Link>{" "}
            {isOwn ? (
              <>
                {recipeId === null ? "new, " : ""}saved <ClockTime at={savedAt} withDay />
              </>
            ) : (
              <>
                {writerName}, begun <ClockTime at={begunAt} withDay />
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
